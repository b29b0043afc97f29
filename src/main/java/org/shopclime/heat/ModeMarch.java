package org.shopclime.heat;

import java.util.Arrays;

/**
 * Steps a network through time by the modes of its chains, in steps of one length or of several.
 * Drivers are constant over a step (means).
 *
 * <p>Over a step the modes are exact; air and star of each room are straight lines, the ones for
 * which the heat balance holds in its mean and in its first moment, with a jump of the air between
 * steps: the discontinuous Galerkin method of first degree in time (K. Eriksson, C. Johnson and V.
 * Thomée, RAIRO Modél. Math. Anal. Numér. 19 (1985) 611), of third order at the ends of steps and
 * L-stable. Heat stored equals heat come in, to rounding.
 *
 * <p>Error: against {@link March} at steps of five minutes {@code ModeMarchTest} holds hourly steps
 * under hourly drivers. Heat on nodes ({@link Drivers#nodeSource}) is refused. Not for several
 * threads at once. Numbers of rooms, chains and boundaries out of range are refused with an {@link
 * IllegalArgumentException}.
 */
public final class ModeMarch {

  private final Network network;
  private final Modes modes;
  private final Stride[] strides;

  private Stride stride;

  private double[] sizes;
  private double[] sizesBefore;
  private final double[] air;
  private final double[] airBefore;

  /** Mean and tilt of each end's face by the modes' start; the tilt where a room sees it. */
  private final double[] startMean;

  private final double[] startTilt;
  private boolean started;

  /**
   * Drive of each end by what is known, that of the other end of its chain, and mean and tilt of
   * its face under start and both.
   */
  private final double[] known;

  private final double[] knownBeyond;
  private final double[] knownMean;
  private final double[] knownTilt;

  private final double[] airDrive;
  private final double[] starDrive;
  private final double[] x;
  private final double[] stars;
  private final double[] answer;

  /** Drive of each end by its room and of the other end of its chain by that one's. */
  private final double[] byRoom;

  private final double[] byRoomTilt;
  private final double[] byRoomBeyond;
  private final double[] byRoomTiltBeyond;

  /** Ends that see rooms, those of one room behind those of the other, and where each begins. */
  private final int[] roomEnds;

  private final int[] roomStart;

  /** Their conductances, in that order. */
  private final double[] convective;

  private final double[] radiant;

  private final double[] meanFace;

  /** Drive of each end at the end of the last step. */
  private final double[] endDrives;

  private final double[] plant;
  private final double[] boundary;
  private boolean stepped;
  private boolean facesFound;

  /**
   * Finds the modes of a network; all temperatures are 0 °C at first.
   *
   * @param network the network
   * @param stepSeconds lengths of step to choose from, s, each above 0 and finite; the first is
   *     chosen
   * @throws IllegalArgumentException if there is none or one is out of that range
   */
  public ModeMarch(Network network, double... stepSeconds) {
    this(new Modes(network, false), stepSeconds);
  }

  /**
   * The same, whose state can be handed over to the march of a network that differs in its films.
   *
   * @param network the network
   * @param stepSeconds as there
   * @return march for {@link #takeOver}
   */
  public static ModeMarch handingOver(Network network, double... stepSeconds) {
    return new ModeMarch(new Modes(network, true), stepSeconds);
  }

  private ModeMarch(Modes modes, double... stepSeconds) {
    this.modes = modes;
    network = modes.network;
    if (stepSeconds.length == 0) {
      throw new IllegalArgumentException("no length of step; takes one or more");
    }
    strides = new Stride[stepSeconds.length];
    for (int i = 0; i < strides.length; i++) {
      strides[i] = new Stride(modes, stepSeconds[i]);
    }
    stride = strides[0];
    sizes = new double[modes.count()];
    sizesBefore = new double[modes.count()];
    int rooms = network.rooms();
    int ends = 2 * network.chains();
    air = new double[rooms];
    airBefore = new double[rooms];
    startMean = new double[ends];
    startTilt = new double[ends];
    known = new double[ends];
    knownBeyond = new double[ends];
    knownMean = new double[ends];
    knownTilt = new double[ends];
    airDrive = new double[2 * rooms];
    starDrive = new double[2 * rooms];
    x = new double[2 * rooms];
    stars = new double[2 * rooms];
    answer = new double[2 * rooms];
    byRoom = new double[ends];
    byRoomTilt = new double[ends];
    byRoomBeyond = new double[ends];
    byRoomTiltBeyond = new double[ends];
    roomStart = new int[rooms + 1];
    roomEnds = endsByRoom(network, roomStart);
    convective = Arrays.stream(roomEnds).mapToDouble(e -> network.endConvective[e]).toArray();
    radiant = Arrays.stream(roomEnds).mapToDouble(e -> network.endRadiant[e]).toArray();
    meanFace = new double[ends];
    endDrives = new double[ends];
    plant = new double[rooms];
    boundary = new double[network.boundaries()];
  }

  private static int[] endsByRoom(Network network, int[] roomStart) {
    int[] ends = new int[network.endRoom.length];
    int count = 0;
    for (int r = 0; r < network.rooms(); r++) {
      for (int e = 0; e < network.endRoom.length; e++) {
        if (network.endRoom[e] == r) {
          ends[count++] = e;
        }
      }
      roomStart[r + 1] = count;
    }
    return Arrays.copyOf(ends, count);
  }

  /**
   * Chooses the length of the steps to come.
   *
   * @param which number of the length, from 0
   * @throws IllegalArgumentException if there is no such length
   */
  public void choose(int which) {
    Check.index("length of step", which, strides.length);
    if (stride != strides[which]) {
      stride = strides[which];
      started = false;
    }
  }

  /**
   * Conductances of the films of all ends.
   *
   * @return W/K, left and right end of chain after chain
   */
  public double[] faceConductances() {
    double[] conductances = new double[meanFace.length];
    Arrays.setAll(
        conductances, e -> network.endOuter[e] + network.endConvective[e] + network.endRadiant[e]);
    return conductances;
  }

  /**
   * Conductances between the air of each room and the faces and boundaries around it.
   *
   * @return W/K, by room
   */
  public double[] roomConductances() {
    double[] conductances = new double[air.length];
    for (int e = 0; e < meanFace.length; e++) {
      if (network.endRoom[e] >= 0) {
        conductances[network.endRoom[e]] += network.endConvective[e];
      }
    }
    for (int l = 0; l < network.linkRoom.length; l++) {
      conductances[network.linkRoom[l]] += network.linkConductance[l];
    }
    return conductances;
  }

  /**
   * Puts all temperatures to one value.
   *
   * @param celsius °C, finite
   * @throws IllegalArgumentException if it is not finite
   */
  public void start(double celsius) {
    Check.finite("temperature to start from, °C", celsius);
    for (int m = 0; m < sizes.length; m++) {
      sizes[m] = celsius * modes.stored[m];
    }
    Arrays.fill(air, celsius);
    Arrays.fill(stars, 0);
    for (int r = 0; r < air.length; r++) {
      stars[2 * r] = celsius;
    }
    Arrays.fill(meanFace, celsius);
    rest();
  }

  /**
   * Puts all temperatures to the steady state under the drivers.
   *
   * @param d drivers
   * @throws IllegalStateException as {@link SteadyState#solve}
   * @throws IllegalArgumentException if the drivers are those of another network
   */
  public void startSteady(Drivers d) {
    SteadyState.Solution steady = SteadyState.solve(network, d);
    double[] temperatures = steady.temperatures();
    int rooms = network.rooms();
    for (int k = 0; k < network.chains(); k++) {
      double left = steadyDrive(2 * k, d, temperatures);
      double right = steadyDrive(2 * k + 1, d, temperatures);
      for (int m = modes.start[k]; m < modes.start[k + 1]; m++) {
        sizes[m] = (modes.left[m] * left + modes.right[m] * right) / modes.rate[m];
      }
    }
    for (int e = 0; e < meanFace.length; e++) {
      meanFace[e] = temperatures[2 * rooms + network.endNode(e)];
    }
    for (int r = 0; r < rooms; r++) {
      air[r] = temperatures[r];
      stars[2 * r] = temperatures[rooms + r];
      stars[2 * r + 1] = 0;
    }
    rest();
  }

  private double steadyDrive(int e, Drivers d, double[] temperatures) {
    double heat = outerHeat(e, d);
    int room = network.endRoom[e];
    if (room >= 0) {
      heat += network.endConvective[e] * temperatures[room];
      heat += network.endRadiant[e] * temperatures[network.rooms() + room];
    }
    return heat;
  }

  /** What is told of the last step reads as at rest. */
  private void rest() {
    System.arraycopy(sizes, 0, sizesBefore, 0, sizes.length);
    System.arraycopy(air, 0, airBefore, 0, air.length);
    for (int r = 0; r < air.length; r++) {
      x[2 * r] = air[r];
      x[2 * r + 1] = 0;
    }
    Arrays.fill(plant, 0);
    started = false;
    stepped = false;
  }

  /**
   * Where the march stands, to be handed back to {@link #restore}.
   *
   * @return a copy: air of the rooms, °C, then the modes of chain after chain
   */
  public double[] state() {
    double[] state = Arrays.copyOf(air, air.length + sizes.length);
    System.arraycopy(sizes, 0, state, air.length, sizes.length);
    return state;
  }

  /**
   * How much a state changes when all of the network gets warmer by 1 K.
   *
   * @return laid out as {@link #state}
   */
  public double[] warmth() {
    double[] warmth = new double[air.length + sizes.length];
    Arrays.fill(warmth, 0, air.length, 1);
    System.arraycopy(modes.stored, 0, warmth, air.length, sizes.length);
    return warmth;
  }

  /**
   * How much each entry of a state moves a temperature: 1 for air, for a mode the larger of its
   * weights at the two faces.
   *
   * @return laid out as {@link #state}, K for each unit, above 0
   */
  public double[] weights() {
    double[] weights = new double[air.length + sizes.length];
    Arrays.fill(weights, 0, air.length, 1);
    for (int m = 0; m < sizes.length; m++) {
      double most = Math.max(Math.abs(modes.left[m]), Math.abs(modes.right[m]));
      weights[air.length + m] = most > 0 ? most : 1;
    }
    return weights;
  }

  /**
   * Goes to where an earlier {@link #state} stood.
   *
   * @param state from a march of the same network; copied
   * @throws IllegalArgumentException if the number of values does not fit or one is not finite
   */
  public void restore(double[] state) {
    if (state.length != air.length + sizes.length) {
      throw new IllegalArgumentException(
          "a state of " + state.length + " values; takes " + (air.length + sizes.length));
    }
    for (double value : state) {
      Check.finite("entry of a state", value);
    }
    System.arraycopy(state, 0, air, 0, air.length);
    System.arraycopy(state, air.length, sizes, 0, sizes.length);
    rest();
  }

  /**
   * Goes on from where the march of another network stands.
   *
   * <p>What modes faster than ten minutes stand for is taken as settled under what drove it last.
   *
   * @param other march made by {@link #handingOver}, as this one, which has made a step; its
   *     network differs from this in the films of its ends only
   * @throws IllegalArgumentException if the networks differ in more
   */
  public void takeOver(ModeMarch other) {
    modes.takeOver(other.modes, other.sizes, other.endDrives, sizes);
    System.arraycopy(other.air, 0, air, 0, air.length);
    System.arraycopy(other.stars, 0, stars, 0, stars.length);
    System.arraycopy(other.meanFace, 0, meanFace, 0, meanFace.length);
    rest();
  }

  /** What the modes do to the faces over the step if nothing drives them. */
  private void begin() {
    if (started) {
      return;
    }
    started = true;
    forgetFaces();
    double[] f = stride.groups;
    for (int g = 0; g < modes.chainOfGroup.length; g++) {
      int m = g * Modes.GROUP;
      answer(f, g, sizes[m], sizes[m + 1], sizes[m + 2], sizes[m + 3]);
    }
    faceAnswers(stride);
  }

  private void forgetFaces() {
    Arrays.fill(startMean, 0);
    Arrays.fill(startTilt, 0);
  }

  /** Adds what a group of modes of these sizes does to its faces, in lengths of the step. */
  private void answer(double[] f, int group, double a, double b, double c, double d) {
    int left = 2 * modes.chainOfGroup[group];
    int right = left + 1;
    int i = group * Stride.OF_GROUP;
    startMean[left] += sum(f, i + Stride.LEFT, a, b, c, d);
    if (network.endRoom[left] >= 0) {
      startTilt[left] -= sum(f, i + Stride.LEFT_TILT, a, b, c, d);
    }
    startMean[right] += sum(f, i + Stride.RIGHT, a, b, c, d);
    startTilt[right] -= sum(f, i + Stride.RIGHT_TILT, a, b, c, d);
  }

  private static double sum(double[] f, int i, double a, double b, double c, double d) {
    return f[i] * a + f[i + 1] * b + (f[i + 2] * c + f[i + 3] * d);
  }

  private void faceAnswers(Stride of) {
    double share = 1 / of.seconds;
    for (int e = 0; e < startMean.length; e++) {
      startMean[e] *= share;
    }
    for (int e = 0; e < startTilt.length; e++) {
      startTilt[e] *= share;
    }
  }

  private double outerHeat(int e, Drivers d) {
    int b = network.endBoundary[e];
    return b >= 0 ? d.endSource[e] + network.endOuter[e] * d.boundary[b] : d.endSource[e];
  }

  /** The drives of air and stars by what is known. */
  private void drive(Drivers d) {
    double[] source = d.endSource;
    for (int e = 0; e < source.length; e += 2) {
      double left = outerHeat(e, d);
      double right = outerHeat(e + 1, d);
      known[e] = left;
      known[e + 1] = right;
      knownBeyond[e] = right;
      knownBeyond[e + 1] = left;
    }
    faces(stride);
    for (int r = 0; r < air.length; r++) {
      give(r, d);
    }
    for (int l = 0; l < network.linkRoom.length; l++) {
      airDrive[2 * network.linkRoom[l]] +=
          network.linkConductance[l] * d.boundary[network.linkBoundary[l]];
    }
    stride.core.addStars(starDrive, airDrive);
  }

  /** Mean and tilt of all faces under start and what is known. */
  private void faces(Stride s) {
    double[] own = s.own;
    double[] beyond = s.beyond;
    double[] ownTilted = s.ownTilted;
    double[] beyondTilted = s.beyondTilted;
    for (int e = 0; e < known.length; e++) {
      knownMean[e] = startMean[e] + own[e] * known[e] + beyond[e] * knownBeyond[e];
    }
    for (int e = 0; e < known.length; e++) {
      knownTilt[e] = startTilt[e] - ownTilted[e] * known[e] - beyondTilted[e] * knownBeyond[e];
    }
  }

  /** What the air and the star of a room get from the faces and what is put into them. */
  private void give(int r, Drivers d) {
    double storing = network.airCapacity[r] / stride.seconds * air[r];
    double airMean = storing;
    double airTilt = -storing;
    double starMean = 0;
    double starTilt = 0;
    for (int i = roomStart[r]; i < roomStart[r + 1]; i++) {
      double mean = knownMean[roomEnds[i]];
      double tilt = knownTilt[roomEnds[i]];
      airMean += convective[i] * mean;
      airTilt += convective[i] * tilt;
      starMean += radiant[i] * mean;
      starTilt += radiant[i] * tilt;
    }
    if (network.hasStar[r]) {
      starMean += d.starSource[r];
    } else {
      airMean += d.starSource[r];
    }
    airDrive[2 * r] = airMean;
    airDrive[2 * r + 1] = airTilt;
    starDrive[2 * r] = starMean;
    starDrive[2 * r + 1] = starTilt;
  }

  /** The air under the drives found, the sources of heat in it, flows and holds. */
  private void solveAir(Drivers d) {
    facesFound = false;
    stride.core.prepare(d);
    for (int r = 0; r < air.length; r++) {
      if (d.held[r]) {
        x[2 * r] = d.holdTemperature[r];
        x[2 * r + 1] = 0;
      } else {
        x[2 * r] = airDrive[2 * r] + d.airSource[r] + d.inflow[r] * d.inflowTemperature[r];
        x[2 * r + 1] = airDrive[2 * r + 1];
      }
    }
    stride.core.solve(x);
  }

  /**
   * Looks where a step leads, without making it: what is told of the step then is that of this one,
   * but where rooms stand does not change. For controls.
   *
   * @param d drivers, constant over the step
   * @throws IllegalArgumentException if the drivers are those of another network, or put heat on
   *     nodes
   */
  public void look(Drivers d) {
    Network.same(network, d.network);
    if (d.onNodes) {
      throw new IllegalArgumentException("heat on nodes of chains; takes it on their faces only");
    }
    begin();
    drive(d);
    solveAir(d);
  }

  /**
   * Looks again after a change of what acts on the air alone: its sources, flows and holds.
   *
   * @param d the drivers of the last {@link #look}, else unchanged
   */
  public void lookAgain(Drivers d) {
    solveAir(d);
  }

  /**
   * Air of a room at the end of the step last looked at.
   *
   * @param room number of the room
   * @return °C
   */
  public double ahead(int room) {
    int r = network.air(room);
    return x[2 * r] + x[2 * r + 1];
  }

  /**
   * Air of a room, mean over the step last looked at or made.
   *
   * @param room number of the room
   * @return °C
   */
  public double meanAir(int room) {
    return x[2 * network.air(room)];
  }

  /**
   * By how much the air of a room jumps at the start of the step last looked at: what answers
   * faster than the step. The error of the step grows with it.
   *
   * @param room number of the room
   * @return K, with its sign
   */
  public double jump(int room) {
    int r = network.air(room);
    return x[2 * r] - x[2 * r + 1] - air[r];
  }

  /**
   * Heat that holds a room in the step last looked at, mean over it.
   *
   * @param d the drivers of that look
   * @param room number of the room
   * @return W into its air; 0 for a floating room
   */
  public double plantAhead(Drivers d, int room) {
    int r = network.air(room);
    return d.held[r]
        ? stride.core.missing(r, x, airDrive)
            - d.airSource[r]
            - d.inflow[r] * d.inflowTemperature[r]
        : 0;
  }

  /**
   * By how much the heat that holds a room rises or falls over the step last looked at.
   *
   * @param d the drivers of that look
   * @param room number of the room
   * @return difference of its end from its mean, as a straight line, W; 0 for a floating room
   */
  public double plantTilt(Drivers d, int room) {
    int r = network.air(room);
    return d.held[r] ? 3 * stride.core.missingTilt(r, x, airDrive) : 0;
  }

  /**
   * How the air of a room at the end of a step answers to constant heat put into it over that step.
   * Exact, as the network is linear.
   *
   * @param d the drivers of the last look, of which only flows and holds matter
   * @param room number of the room
   * @return K/W, 0 or more; 0 if the room is held
   */
  public double response(Drivers d, int room) {
    int r = network.air(room);
    if (d.held[r]) {
      return 0;
    }
    stride.core.prepare(d);
    Arrays.fill(answer, 0);
    answer[2 * r] = 1;
    stride.core.solve(answer);
    return answer[2 * r] + answer[2 * r + 1];
  }

  /** The faces in the step last looked at; needed before the faces are asked for. */
  public void lookAtFaces() {
    if (facesFound) {
      return;
    }
    facesFound = true;
    stride.core.stars(starDrive, x, stars);
    for (int r = 0; r < air.length; r++) {
      double airMean = x[2 * r];
      double airTilt = x[2 * r + 1];
      double starMean = stars[2 * r];
      double starTilt = stars[2 * r + 1];
      for (int i = roomStart[r]; i < roomStart[r + 1]; i++) {
        int e = roomEnds[i];
        double mean = convective[i] * airMean + radiant[i] * starMean;
        double tilt = convective[i] * airTilt + radiant[i] * starTilt;
        byRoom[e] = mean;
        byRoomTilt[e] = tilt;
        byRoomBeyond[e ^ 1] = mean;
        byRoomTiltBeyond[e ^ 1] = tilt;
      }
    }
    double[] own = stride.own;
    double[] beyond = stride.beyond;
    double[] ownTilted = stride.ownTilted;
    double[] beyondTilted = stride.beyondTilted;
    // Two short loops, as one of this length is not made into vectors.
    for (int e = 0; e < meanFace.length; e++) {
      meanFace[e] = knownMean[e] + own[e] * byRoom[e] + beyond[e] * byRoomBeyond[e];
    }
    for (int e = 0; e < meanFace.length; e++) {
      meanFace[e] += ownTilted[e] * byRoomTilt[e] + beyondTilted[e] * byRoomTiltBeyond[e];
    }
  }

  /**
   * Makes the step last looked at.
   *
   * @param d the drivers of that look
   */
  public void go(Drivers d) {
    makeStep(d, stride);
  }

  /**
   * Makes the step last looked at and chooses the length of the next.
   *
   * @param d the drivers of that look
   * @param next number of that length, from 0
   * @throws IllegalArgumentException if there is no such length
   */
  public void go(Drivers d, int next) {
    Check.index("length of step", next, strides.length);
    makeStep(d, strides[next]);
  }

  private void makeStep(Drivers d, Stride next) {
    lookAtFaces();
    for (int r = 0; r < air.length; r++) {
      plant[r] = plantAhead(d, r);
      airBefore[r] = air[r];
      air[r] = x[2 * r] + x[2 * r + 1];
    }
    advance(next);
    stride = next;
    double[] z = sizes;
    sizes = sizesBefore;
    sizesBefore = z;
    System.arraycopy(d.boundary, 0, boundary, 0, boundary.length);
    started = true;
    stepped = true;
  }

  /** The modes at the end of the step, and what they do to the faces in the next one. */
  private void advance(Stride following) {
    for (int e = 0; e < known.length; e++) {
      known[e] += byRoom[e];
      endDrives[e] = known[e] + byRoomTilt[e];
    }
    forgetFaces();
    double[] f = stride.groups;
    double[] z = sizes;
    double[] next = sizesBefore;
    for (int g = 0; g < modes.chainOfGroup.length; g++) {
      int end = 2 * modes.chainOfGroup[g];
      double left = known[end];
      double right = known[end + 1];
      double rightTilt = byRoomTilt[end + 1];
      int m = g * Modes.GROUP;
      int i = g * Stride.OF_GROUP;
      double a = f[i] * z[m] + step(f, i, left, right, rightTilt);
      double b = f[i + 1] * z[m + 1] + step(f, i + 1, left, right, rightTilt);
      double c = f[i + 2] * z[m + 2] + step(f, i + 2, left, right, rightTilt);
      double d = f[i + 3] * z[m + 3] + step(f, i + 3, left, right, rightTilt);
      if (network.endRoom[end] >= 0) {
        double leftTilt = byRoomTilt[end];
        a += f[i + Stride.LEFT_TILT] * leftTilt;
        b += f[i + Stride.LEFT_TILT + 1] * leftTilt;
        c += f[i + Stride.LEFT_TILT + 2] * leftTilt;
        d += f[i + Stride.LEFT_TILT + 3] * leftTilt;
      }
      next[m] = a;
      next[m + 1] = b;
      next[m + 2] = c;
      next[m + 3] = d;
      answer(following.groups, g, a, b, c, d);
    }
    faceAnswers(following);
  }

  private static double step(double[] f, int i, double left, double right, double rightTilt) {
    return f[i + Stride.LEFT] * left
        + (f[i + Stride.RIGHT] * right + f[i + Stride.RIGHT_TILT] * rightTilt);
  }

  /**
   * Advances one step.
   *
   * @param d drivers, constant over the step
   * @throws IllegalArgumentException if the drivers are those of another network
   */
  public void step(Drivers d) {
    look(d);
    go(d);
  }

  /**
   * Air of a room at the end of the last step made.
   *
   * @param room number of the room
   * @return °C
   */
  public double air(int room) {
    return air[network.air(room)];
  }

  /**
   * Star node of a room, mean over the last step; its air where nothing radiates.
   *
   * @param room number of the room
   * @return °C
   */
  public double meanStar(int room) {
    return stars[2 * network.air(room)];
  }

  /**
   * Left face of a chain, mean over the last step or the one last looked at.
   *
   * @param chain number of the chain
   * @return °C
   */
  public double leftFace(int chain) {
    return meanFace[2 * chain];
  }

  /**
   * Right face of a chain, mean over the last step or the one last looked at.
   *
   * @param chain number of the chain
   * @return °C
   */
  public double rightFace(int chain) {
    return meanFace[2 * chain + 1];
  }

  /**
   * All faces, mean over the last step or the one last looked at.
   *
   * @param into set to the left (2 k) and right (2 k + 1) face of chain k, °C
   */
  public void faces(double[] into) {
    System.arraycopy(meanFace, 0, into, 0, meanFace.length);
  }

  /**
   * Heat put into a held room's air to hold it, mean over the last step.
   *
   * @param room number of the room
   * @return W, above 0 when heating; 0 for a floating room and before the first step
   */
  public double plant(int room) {
    return plant[network.air(room)];
  }

  /**
   * Heat the network stored over the last step, in the air of rooms and the modes of chains.
   *
   * @return J; 0 before the first step
   */
  public double storedHeatChange() {
    double heat = 0;
    for (int r = 0; r < air.length; r++) {
      heat += network.airCapacity[r] * (air[r] - airBefore[r]);
    }
    for (int m = 0; m < sizes.length; m++) {
      heat += modes.stored[m] * (sizes[m] - sizesBefore[m]);
    }
    return heat;
  }

  /**
   * Heat the network holds, in the air of rooms and the modes of chains.
   *
   * @return J above 0 °C
   */
  public double heatHeld() {
    double heat = 0;
    for (int r = 0; r < air.length; r++) {
      heat += network.airCapacity[r] * air[r];
    }
    for (int m = 0; m < sizes.length; m++) {
      heat += modes.stored[m] * sizes[m];
    }
    return heat;
  }

  /**
   * Heat out of a boundary into the network, mean over the last step.
   *
   * @param index number of the boundary
   * @return W; 0 before the first step
   */
  public double boundaryHeat(int index) {
    Check.index("boundary", index, boundary.length);
    if (!stepped) {
      return 0;
    }
    double heat = 0;
    for (int e = 0; e < network.endBoundary.length; e++) {
      if (network.endBoundary[e] == index) {
        heat += network.endOuter[e] * (boundary[index] - meanFace[e]);
      }
    }
    for (int l = 0; l < network.linkRoom.length; l++) {
      if (network.linkBoundary[l] == index) {
        heat += network.linkConductance[l] * (boundary[index] - x[2 * network.linkRoom[l]]);
      }
    }
    return heat;
  }
}
