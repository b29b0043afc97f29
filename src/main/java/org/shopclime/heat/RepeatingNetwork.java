package org.shopclime.heat;

import java.util.Arrays;

/**
 * A network through a day that repeats for ever, some rooms held and the others floating under
 * constant flows of air from outside, solved exactly in its waves instead of marching until the day
 * repeats.
 *
 * <p>Drives are constant through each half hour, those of air and stars have a tilt besides. The
 * modes of walls answer to that exactly ({@link ChainWaves}); what air and stars do within a half
 * hour is taken as mean and tilt (Galerkin's method). Against a march of many times finer steps the
 * hours of a load are within 0.05 % of its peak ({@code RepeatingNetworkTest}, {@code
 * HotDayBooksProperties}). Means of the day are exact.
 *
 * <p>The answer of a held room's plant to heat anywhere is the temperature there when the room's
 * air is raised by 1 K (reciprocity; a tilt answers with its sign turned, as time runs backward),
 * so that one solution a room tells what all drives do to its plant. {@link #answer} uses that;
 * {@link #day} does not: it solves for one day's drives, and the two can be held against each
 * other.
 */
public final class RepeatingNetwork {

  private static final int COUNT = Waves.COUNT;

  private final Network network;
  private final boolean[] held;
  private final int rooms;

  /** Air of the rooms, then the stars. */
  private final int nodes;

  private final int[] starNode;
  private final ChainWaves chains;
  private final int[][] endsOfBoundary;

  /** First of the two unknowns (mean, tilt) of each node, or -1 where it is held. */
  private final int[] unknown;

  private final int unknowns;

  /** Heat that leaves a row for each unit of a column, by (row * 2 nodes + column) and wave. */
  private final double[] re;

  private final double[] im;
  private final ComplexFactors[] factors = new ComplexFactors[COUNT];

  /**
   * Factors a network.
   *
   * @param network the network
   * @param held which rooms are held
   * @param inflow air from outside into each floating room, W/K; its temperature is driven by
   *     {@link Driven#air}
   * @throws IllegalStateException if nothing fixes the temperature of some room
   */
  public RepeatingNetwork(Network network, boolean[] held, double[] inflow) {
    this.network = network;
    this.held = held.clone();
    rooms = network.rooms();
    starNode = new int[rooms];
    int count = rooms;
    for (int r = 0; r < rooms; r++) {
      starNode[r] = network.hasStar[r] ? count++ : -1;
    }
    nodes = count;
    unknown = new int[nodes];
    int free = 0;
    for (int i = 0; i < nodes; i++) {
      unknown[i] = i < rooms && held[i] ? -1 : free;
      free += unknown[i] < 0 ? 0 : 2;
    }
    unknowns = free;
    endsOfBoundary = endsOfBoundary(network);
    chains = new ChainWaves(network);
    re = new double[4 * nodes * nodes * COUNT];
    im = new double[re.length];
    for (int chain = 0; chain < network.chains(); chain++) {
      tie(2 * chain, 2 * chain, ChainWaves.at(chain, ChainWaves.LEFT_LEFT));
      tie(2 * chain, 2 * chain + 1, ChainWaves.at(chain, ChainWaves.LEFT_RIGHT));
      tie(2 * chain + 1, 2 * chain, ChainWaves.at(chain, ChainWaves.LEFT_RIGHT));
      tie(2 * chain + 1, 2 * chain + 1, ChainWaves.at(chain, ChainWaves.RIGHT_RIGHT));
    }
    ground(inflow);
    factor();
  }

  private static int[][] endsOfBoundary(Network network) {
    int[] count = new int[network.boundaries()];
    for (int boundary : network.endBoundary) {
      if (boundary >= 0) {
        count[boundary]++;
      }
    }
    int[][] ends = new int[count.length][];
    for (int b = 0; b < count.length; b++) {
      ends[b] = new int[count[b]];
    }
    for (int e = network.endBoundary.length - 1; e >= 0; e--) {
      int boundary = network.endBoundary[e];
      if (boundary >= 0) {
        ends[boundary][--count[boundary]] = e;
      }
    }
    return ends;
  }

  /** Ties what end e sees to what end f of the same chain sees. */
  private void tie(int e, int f, int answer) {
    int room = network.endRoom[e];
    int other = network.endRoom[f];
    if (room < 0 || other < 0) {
      return;
    }
    double convective = network.endConvective[e];
    double radiant = network.endRadiant[e];
    tie(room, other, convective * network.endConvective[f], answer);
    if (network.endRadiant[f] > 0) {
      tie(room, starNode[other], convective * network.endRadiant[f], answer);
    }
    if (radiant > 0) {
      tie(starNode[room], other, radiant * network.endConvective[f], answer);
    }
    if (radiant > 0 && network.endRadiant[f] > 0) {
      tie(starNode[room], starNode[other], radiant * network.endRadiant[f], answer);
    }
  }

  private void tie(int row, int column, double weight, int answer) {
    if (weight == 0) {
      return;
    }
    int mean = at(2 * row, 2 * column);
    int across = at(2 * row, 2 * column + 1);
    int back = at(2 * row + 1, 2 * column);
    int tilt = at(2 * row + 1, 2 * column + 1);
    int p = answer;
    int n = answer + ModeWave.N * COUNT;
    int q = answer + ModeWave.Q * COUNT;
    for (int k = 0; k < COUNT; k++) {
      re[mean + k] -= weight * chains.re[p + k];
      im[mean + k] -= weight * chains.im[p + k];
      re[across + k] -= weight * chains.re[n + k];
      im[across + k] -= weight * chains.im[n + k];
      re[back + k] += weight * chains.re[n + k];
      im[back + k] += weight * chains.im[n + k];
      re[tilt + k] -= weight * chains.re[q + k];
      im[tilt + k] -= weight * chains.im[q + k];
    }
  }

  private int at(int row, int column) {
    return (row * 2 * nodes + column) * COUNT;
  }

  /** What leaves each node at its own temperature, and what its air stores. */
  private void ground(double[] inflow) {
    double[] sum = new double[nodes];
    for (int e = 0; e < network.endRoom.length; e++) {
      int room = network.endRoom[e];
      if (room >= 0) {
        sum[room] += network.endConvective[e];
        if (network.endRadiant[e] > 0) {
          sum[starNode[room]] += network.endRadiant[e];
        }
      }
    }
    for (int l = 0; l < network.linkRoom.length; l++) {
      sum[network.linkRoom[l]] += network.linkConductance[l];
    }
    for (int i = 0; i < nodes; i++) {
      boolean stores = i < rooms && !held[i] && network.airCapacity[i] > 0;
      double conductance = sum[i] + (i < rooms && !held[i] ? inflow[i] : 0);
      if (stores) {
        store(i, conductance, network.airCapacity[i]);
      } else {
        for (int k = 0; k < COUNT; k++) {
          re[at(2 * i, 2 * i) + k] += conductance;
          re[at(2 * i + 1, 2 * i + 1) + k] += conductance;
        }
      }
    }
  }

  /** The heat that the air of a room takes for its mean and tilt: its answer turned round. */
  private void store(int i, double conductance, double capacity) {
    ModeWave air = new ModeWave();
    air.set(conductance / capacity);
    int mean = at(2 * i, 2 * i);
    int across = at(2 * i, 2 * i + 1);
    int back = at(2 * i + 1, 2 * i);
    int tilt = at(2 * i + 1, 2 * i + 1);
    for (int k = 0; k < COUNT; k++) {
      double pr = air.re[k] / capacity;
      double pi = air.im[k] / capacity;
      double nr = air.re[ModeWave.N * COUNT + k] / capacity;
      double ni = air.im[ModeWave.N * COUNT + k] / capacity;
      double qr = air.re[ModeWave.Q * COUNT + k] / capacity;
      double qi = air.im[ModeWave.Q * COUNT + k] / capacity;
      double real = pr * qr - pi * qi + nr * nr - ni * ni;
      double imaginary = pr * qi + pi * qr + 2 * nr * ni;
      double square = real * real + imaginary * imaginary;
      double a = real / square;
      double b = -imaginary / square;
      re[mean + k] += qr * a - qi * b;
      im[mean + k] += qr * b + qi * a;
      re[across + k] -= nr * a - ni * b;
      im[across + k] -= nr * b + ni * a;
      re[back + k] += nr * a - ni * b;
      im[back + k] += nr * b + ni * a;
      re[tilt + k] += pr * a - pi * b;
      im[tilt + k] += pr * b + pi * a;
    }
  }

  private void factor() {
    int size = 2 * nodes;
    int[] rows = new int[unknowns];
    for (int i = 0; i < nodes; i++) {
      if (unknown[i] >= 0) {
        rows[unknown[i]] = 2 * i;
        rows[unknown[i] + 1] = 2 * i + 1;
      }
    }
    for (int k = 0; k < COUNT; k++) {
      double[] real = new double[unknowns * unknowns];
      double[] imaginary = new double[unknowns * unknowns];
      for (int i = 0; i < unknowns; i++) {
        for (int j = 0; j < unknowns; j++) {
          int from = (rows[i] * size + rows[j]) * COUNT + k;
          real[i * unknowns + j] = re[from];
          imaginary[i * unknowns + j] = im[from];
        }
      }
      factors[k] = new ComplexFactors(unknowns, real, imaginary);
    }
  }

  /**
   * Conductance from the air of a room to its faces.
   *
   * @param room number of the room
   * @return W/K
   */
  public double faceConductance(int room) {
    double sum = 0;
    for (int e = 0; e < network.endRoom.length; e++) {
      sum += network.endRoom[e] == room ? network.endConvective[e] : 0;
    }
    return sum;
  }

  /**
   * Heat capacity of the air of a room.
   *
   * @param room number of the room
   * @return J/K
   */
  public double airCapacity(int room) {
    return network.airCapacity[room];
  }

  /**
   * How a room answers to what drives the day: the plant heat of a held room, W, the air of a
   * floating one, °C.
   *
   * @param room number of the room
   * @return its answers
   */
  public Answer answer(int room) {
    Nodes rise = new Nodes();
    if (held[room]) {
      for (int i = 0; i < 2 * nodes; i++) {
        for (int k = 0; k < COUNT; k++) {
          rise.re[i][k] = -re[at(i, 2 * room) + k];
          rise.im[i][k] = -im[at(i, 2 * room) + k];
        }
      }
      rise.solve();
      Arrays.fill(rise.re[2 * room], 1);
    } else {
      Arrays.fill(rise.re[2 * room], 1);
      rise.solve();
    }
    return new Answer(room, rise);
  }

  /**
   * A day to be driven and then solved.
   *
   * @return a day without any drive
   */
  public Day day() {
    return new Day();
  }

  /** Mean and tilt of each node, wave by wave: heat at first, then temperatures. */
  private final class Nodes {
    private final double[][] re = new double[2 * nodes][COUNT];
    private final double[][] im = new double[2 * nodes][COUNT];

    /** Solves for what floats; held nodes are left at 0. */
    void solve() {
      double[] xRe = new double[unknowns];
      double[] xIm = new double[unknowns];
      for (int k = 0; k < COUNT; k++) {
        for (int i = 0; i < 2 * nodes; i++) {
          if (unknown[i / 2] >= 0) {
            xRe[unknown[i / 2] + i % 2] = re[i][k];
            xIm[unknown[i / 2] + i % 2] = im[i][k];
          }
        }
        factors[k].solve(xRe, xIm);
        for (int i = 0; i < 2 * nodes; i++) {
          boolean floats = unknown[i / 2] >= 0;
          re[i][k] = floats ? xRe[unknown[i / 2] + i % 2] : 0;
          im[i][k] = floats ? xIm[unknown[i / 2] + i % 2] : 0;
        }
      }
    }

    Waves waves(int row, double factor) {
      Waves waves = new Waves();
      for (int k = 0; k < COUNT; k++) {
        waves.re[k] = factor * re[row][k];
        waves.im[k] = factor * im[row][k];
      }
      return waves;
    }

    /** What drives an end, W: of its mean (0) or of its tilt (1). */
    void drive(int e, int kind, Waves into) {
      int room = network.endRoom[e];
      double[] airRe = re[2 * room + kind];
      double[] airIm = im[2 * room + kind];
      double convective = network.endConvective[e];
      double radiant = network.endRadiant[e];
      double[] starRe = radiant > 0 ? re[2 * starNode[room] + kind] : airRe;
      double[] starIm = radiant > 0 ? im[2 * starNode[room] + kind] : airIm;
      for (int k = 0; k < COUNT; k++) {
        into.re[k] = convective * airRe[k] + radiant * starRe[k];
        into.im[k] = convective * airIm[k] + radiant * starIm[k];
      }
    }
  }

  /** Adds the mean of a face under mean and tilt of a drive. */
  private void addFace(int answer, double factor, Waves mean, Waves tilt, Waves into) {
    int n = answer + ModeWave.N * COUNT;
    for (int k = 0; k < COUNT; k++) {
      double pRe = chains.re[answer + k];
      double pIm = chains.im[answer + k];
      double nRe = chains.re[n + k];
      double nIm = chains.im[n + k];
      into.re[k] +=
          factor * (pRe * mean.re[k] - pIm * mean.im[k] + nRe * tilt.re[k] - nIm * tilt.im[k]);
      into.im[k] +=
          factor * (pRe * mean.im[k] + pIm * mean.re[k] + nRe * tilt.im[k] + nIm * tilt.re[k]);
    }
  }

  /** How one room answers to all that drives a day; see {@link RepeatingNetwork#answer}. */
  public final class Answer {

    private final Waves[] faces;
    private final Waves[] mean;
    private final Waves[] tilt;
    private final double[] hold = new double[rooms];

    private Answer(int room, Nodes rise) {
      double sign = held[room] ? -1 : 1;
      mean = new Waves[nodes];
      tilt = new Waves[nodes];
      for (int i = 0; i < nodes; i++) {
        mean[i] = rise.waves(2 * i, sign);
        tilt[i] = rise.waves(2 * i + 1, -sign);
      }
      for (int r = 0; r < rooms; r++) {
        if (held[r]) {
          for (int i = 0; i < nodes; i++) {
            hold[r] -= sign * re[at(2 * r, 2 * i)] * rise.re[2 * i][0];
          }
        }
      }
      faces = new Waves[2 * network.chains()];
      Waves driveMean = new Waves();
      Waves driveTilt = new Waves();
      for (int e = 0; e < faces.length; e++) {
        faces[e] = new Waves();
      }
      for (int e = 0; e < faces.length; e++) {
        if (network.endRoom[e] >= 0) {
          int chain = e / 2;
          boolean left = e % 2 == 0;
          rise.drive(e, 0, driveMean);
          rise.drive(e, 1, driveTilt);
          int own = left ? ChainWaves.LEFT_LEFT : ChainWaves.RIGHT_RIGHT;
          addFace(ChainWaves.at(chain, own), sign, driveMean, driveTilt, faces[e]);
          int across = ChainWaves.at(chain, ChainWaves.LEFT_RIGHT);
          addFace(across, sign, driveMean, driveTilt, faces[e ^ 1]);
        }
      }
    }

    /**
     * A sum of answers, to be driven.
     *
     * @return nothing so far
     */
    public Sum sum() {
      return new Sum(this);
    }
  }

  /** What some drives do to one room. */
  public final class Sum implements Driven {

    private final Answer answer;
    private final Waves sum = new Waves();

    private Sum(Answer answer) {
      this.answer = answer;
    }

    /**
     * Plant heat of a held room, W, or air of a floating one, told from the reference of the
     * drives.
     *
     * @return by the hour
     */
    public Waves result() {
      return sum;
    }

    @Override
    public void boundary(int index, Waves celsius, double reference) {
      for (int e : endsOfBoundary[index]) {
        double outer = network.endOuter[e];
        sum.addProduct(outer, answer.faces[e], celsius);
        sum.re[0] -= outer * answer.faces[e].re[0] * reference;
      }
      for (int l = 0; l < network.linkRoom.length; l++) {
        if (network.linkBoundary[l] == index) {
          Waves air = answer.mean[network.linkRoom[l]];
          sum.addProduct(network.linkConductance[l], air, celsius);
          sum.re[0] -= network.linkConductance[l] * air.re[0] * reference;
        }
      }
    }

    @Override
    public void left(int chain, Waves watts) {
      sum.addProduct(1, answer.faces[2 * chain], watts);
    }

    @Override
    public void right(int chain, Waves watts) {
      sum.addProduct(1, answer.faces[2 * chain + 1], watts);
    }

    @Override
    public void faces(double[] shares, Waves watts) {
      Waves all = new Waves();
      for (int e = 0; e < shares.length; e++) {
        if (shares[e] != 0) {
          all.add(shares[e], answer.faces[e]);
        }
      }
      sum.addProduct(1, all, watts);
    }

    @Override
    public void air(int room, Waves mean, Waves tilt) {
      sum.addProduct(1, answer.mean[room], mean);
      sum.addProduct(1, answer.tilt[room], tilt);
    }

    @Override
    public void star(int room, Waves mean, Waves tilt) {
      int node = starNode[room] >= 0 ? starNode[room] : room;
      sum.addProduct(1, answer.mean[node], mean);
      sum.addProduct(1, answer.tilt[node], tilt);
    }

    @Override
    public void hold(int room, double celsius) {
      sum.re[0] += answer.hold[room] * celsius;
    }
  }

  /** One day under all its drives at once. */
  public final class Day implements Driven {

    private final Waves[] faces = new Waves[2 * network.chains()];
    private final Nodes heat = new Nodes();
    private final double[] hold = new double[rooms];
    private final double[] boundary = new double[network.boundaries()];

    /** What driven faces give to the nodes as though all were at 0 °C, once it is asked for. */
    private Nodes fromFaces;

    private Day() {}

    @Override
    public void boundary(int index, Waves celsius, double reference) {
      boundary[index] += celsius.re[0] - reference;
      for (int e : endsOfBoundary[index]) {
        face(e).add(network.endOuter[e], celsius);
        face(e).re[0] -= network.endOuter[e] * reference;
      }
      for (int l = 0; l < network.linkRoom.length; l++) {
        if (network.linkBoundary[l] == index) {
          double conductance = network.linkConductance[l];
          add(2 * network.linkRoom[l], conductance, celsius);
          heat.re[2 * network.linkRoom[l]][0] -= conductance * reference;
        }
      }
    }

    private Waves face(int e) {
      fromFaces = null;
      if (faces[e] == null) {
        faces[e] = new Waves();
      }
      return faces[e];
    }

    private void add(int row, double factor, Waves watts) {
      for (int k = 0; k < COUNT; k++) {
        heat.re[row][k] += factor * watts.re[k];
        heat.im[row][k] += factor * watts.im[k];
      }
    }

    @Override
    public void left(int chain, Waves watts) {
      face(2 * chain).add(1, watts);
    }

    @Override
    public void right(int chain, Waves watts) {
      face(2 * chain + 1).add(1, watts);
    }

    @Override
    public void faces(double[] shares, Waves watts) {
      for (int e = 0; e < shares.length; e++) {
        if (shares[e] != 0) {
          face(e).add(shares[e], watts);
        }
      }
    }

    @Override
    public void air(int room, Waves mean, Waves tilt) {
      add(2 * room, 1, mean);
      add(2 * room + 1, 1, tilt);
    }

    @Override
    public void star(int room, Waves mean, Waves tilt) {
      int node = starNode[room] >= 0 ? starNode[room] : room;
      add(2 * node, 1, mean);
      add(2 * node + 1, 1, tilt);
    }

    @Override
    public void hold(int room, double celsius) {
      hold[room] += held[room] ? celsius : 0;
    }

    /**
     * Solves for the day as driven so far.
     *
     * @return temperatures and heat
     */
    public Solution solve() {
      return new Solution(this);
    }

    /** Heat of all nodes with that which driven faces give to them. */
    private Nodes given() {
      if (fromFaces == null) {
        fromFaces = fromFaces();
      }
      Nodes given = new Nodes();
      for (int i = 0; i < 2 * nodes; i++) {
        for (int k = 0; k < COUNT; k++) {
          given.re[i][k] = heat.re[i][k] + fromFaces.re[i][k];
          given.im[i][k] = heat.im[i][k] + fromFaces.im[i][k];
        }
      }
      return given;
    }

    private Nodes fromFaces() {
      Nodes given = new Nodes();
      for (int e = 0; e < faces.length; e++) {
        if (faces[e] != null) {
          int own = e % 2 == 0 ? ChainWaves.LEFT_LEFT : ChainWaves.RIGHT_RIGHT;
          give(e, ChainWaves.at(e / 2, own), faces[e], given);
          give(e ^ 1, ChainWaves.at(e / 2, ChainWaves.LEFT_RIGHT), faces[e], given);
        }
      }
      return given;
    }

    private void give(int e, int answer, Waves watts, Nodes into) {
      int room = network.endRoom[e];
      if (room >= 0) {
        give(2 * room, network.endConvective[e], answer, watts, into);
        if (network.endRadiant[e] > 0) {
          give(2 * starNode[room], network.endRadiant[e], answer, watts, into);
        }
      }
    }

    private void give(int row, double factor, int answer, Waves watts, Nodes into) {
      int n = answer + ModeWave.N * COUNT;
      double[] meanRe = into.re[row];
      double[] meanIm = into.im[row];
      double[] tiltRe = into.re[row + 1];
      double[] tiltIm = into.im[row + 1];
      for (int k = 0; k < COUNT; k++) {
        double real = factor * watts.re[k];
        double imaginary = factor * watts.im[k];
        meanRe[k] += chains.re[answer + k] * real - chains.im[answer + k] * imaginary;
        meanIm[k] += chains.re[answer + k] * imaginary + chains.im[answer + k] * real;
        tiltRe[k] -= chains.re[n + k] * real - chains.im[n + k] * imaginary;
        tiltIm[k] -= chains.re[n + k] * imaginary + chains.im[n + k] * real;
      }
    }
  }

  /** Temperatures and heat of one day. */
  public final class Solution {

    private final Day day;
    private final Nodes given;
    private final Nodes now = new Nodes();

    private Solution(Day day) {
      this.day = day;
      given = day.given();
      for (int i = 0; i < 2 * nodes; i++) {
        System.arraycopy(given.re[i], 0, now.re[i], 0, COUNT);
        System.arraycopy(given.im[i], 0, now.im[i], 0, COUNT);
        for (int r = 0; r < rooms; r++) {
          if (held[r]) {
            now.re[i][0] -= re[at(i, 2 * r)] * day.hold[r];
          }
        }
      }
      now.solve();
      for (int r = 0; r < rooms; r++) {
        if (held[r]) {
          now.re[2 * r][0] = day.hold[r];
        }
      }
    }

    /**
     * Air of a room.
     *
     * @param room number of the room
     * @return °C by the hour
     */
    public Waves air(int room) {
      return now.waves(2 * room, 1);
    }

    /**
     * Heat put into the air of a held room to hold it.
     *
     * @param room number of the room
     * @return W by the hour; 0 for a floating room
     */
    public Waves plant(int room) {
      Waves plant = new Waves();
      if (held[room]) {
        plant.add(-1, given.waves(2 * room, 1));
        for (int j = 0; j < 2 * nodes; j++) {
          int from = at(2 * room, j);
          for (int k = 0; k < COUNT; k++) {
            plant.re[k] += re[from + k] * now.re[j][k] - im[from + k] * now.im[j][k];
            plant.im[k] += re[from + k] * now.im[j][k] + im[from + k] * now.re[j][k];
          }
        }
      }
      return plant;
    }

    /**
     * Mean heat out of a boundary into the network.
     *
     * @param index number of the boundary
     * @return W
     */
    public double boundaryHeat(int index) {
      double heat = 0;
      for (int e : endsOfBoundary[index]) {
        heat += network.endOuter[e] * (day.boundary[index] - meanFace(e));
      }
      for (int l = 0; l < network.linkRoom.length; l++) {
        if (network.linkBoundary[l] == index) {
          double room = now.re[2 * network.linkRoom[l]][0];
          heat += network.linkConductance[l] * (day.boundary[index] - room);
        }
      }
      return heat;
    }

    private double meanFace(int e) {
      int chain = e / 2;
      double own =
          e % 2 == 0
              ? chains.steadyLeft[chain]
              : chains.re[ChainWaves.at(chain, ChainWaves.RIGHT_RIGHT)];
      double across = chains.re[ChainWaves.at(chain, ChainWaves.LEFT_RIGHT)];
      return own * meanDrive(e) + across * meanDrive(e ^ 1);
    }

    private double meanDrive(int e) {
      double drive = day.faces[e] == null ? 0 : day.faces[e].re[0];
      int room = network.endRoom[e];
      if (room >= 0) {
        drive += network.endConvective[e] * now.re[2 * room][0];
        if (network.endRadiant[e] > 0) {
          drive += network.endRadiant[e] * now.re[2 * starNode[room]][0];
        }
      }
      return drive;
    }
  }
}
