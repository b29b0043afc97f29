package org.shopclime.envelope;

import java.util.Arrays;
import java.util.List;

/**
 * Water that gathers in a wall through twelve months and dries again.
 *
 * <p>It begins with the first month in which water falls out after one in which none does; where
 * several months begin such a time (a wet winter and a wet summer), with the one that gathers most.
 * Water is kept at the plane it falls out at. Where all of it would dry before a month ends, the
 * rest of that month is taken as dry.
 *
 * <p>Source: ISO 13788:2012, 6.3 to 6.5; the choice between several beginnings is our own.
 */
public final class WaterYear {

  private static final int MONTHS = 12;

  private static final double SECONDS_PER_DAY = 86_400;

  private static final int[] DAYS = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

  /** Less than this is nothing, kg/m². */
  private static final double NOTHING = 1e-7;

  private final SlicedWall wall;
  private final int first;

  /** By month (0 January) and plane, kg/m² at the end of the month. */
  private final double[][] held;

  private WaterYear(SlicedWall wall, int first, double[][] held) {
    this.wall = wall;
    this.first = first;
    this.held = held;
  }

  /**
   * Goes through a year.
   *
   * @param wall the wall
   * @param months what stands on both sides in each month, January first
   * @return its water
   * @throws IllegalArgumentException if there are not twelve months
   */
  public static WaterYear of(SlicedWall wall, List<WallClimate> months) {
    if (months.size() != MONTHS) {
      throw new IllegalArgumentException(months.size() + " months; takes 12");
    }
    boolean[] wets = new boolean[MONTHS];
    boolean always = true;
    for (int month = 0; month < MONTHS; month++) {
      wets[month] = wets(Diffusion.of(wall, months.get(month)), month);
      always &= wets[month];
    }
    WaterYear worst = new WaterYear(wall, -1, new double[MONTHS][wall.planes().size()]);
    for (int month = 0; month < MONTHS; month++) {
      boolean begins =
          wets[month] && (!wets[(month + MONTHS - 1) % MONTHS] || (always && month == 0));
      if (begins) {
        WaterYear year = from(wall, months, month);
        worst = worst.first < 0 || year.most() > worst.most() ? year : worst;
      }
    }
    return worst;
  }

  private static boolean wets(Diffusion diffusion, int month) {
    for (int plane = 0; plane < diffusion.wall().planes().size(); plane++) {
      if (diffusion.rate(plane) * seconds(month) > NOTHING) {
        return true;
      }
    }
    return false;
  }

  private static WaterYear from(SlicedWall wall, List<WallClimate> months, int first) {
    double[] water = new double[wall.planes().size()];
    double[][] held = new double[MONTHS][];
    for (int i = 0; i < MONTHS; i++) {
      int month = (first + i) % MONTHS;
      Diffusion diffusion = Diffusion.of(wall, months.get(month), water);
      for (int plane = 0; plane < water.length; plane++) {
        double after = water[plane] + diffusion.rate(plane) * seconds(month);
        water[plane] = after > NOTHING ? after : 0;
      }
      held[month] = water.clone();
    }
    return new WaterYear(wall, first + 1, held);
  }

  /**
   * Length of a month.
   *
   * @param month 0 (January) to 11
   */
  private static double seconds(int month) {
    return DAYS[month] * SECONDS_PER_DAY;
  }

  /**
   * Whether water falls out in any month.
   *
   * @return false if the wall stays dry by this method
   */
  public boolean isWet() {
    return first > 0;
  }

  /**
   * Month in which water begins to gather.
   *
   * @return 1 to 12; -1 if there is none
   */
  public int firstMonth() {
    return first;
  }

  /**
   * Water in the wall at the end of a month.
   *
   * @param month 1 to 12
   * @return kg/m²
   */
  public double held(int month) {
    return Arrays.stream(held[month - 1]).sum();
  }

  /**
   * Water at a plane at the end of a month.
   *
   * @param month 1 to 12
   * @param plane 0 (outer face) to the last (inner face)
   * @return kg/m²
   */
  public double held(int month, int plane) {
    return held[month - 1][plane];
  }

  /**
   * Most water at the end of any month.
   *
   * @return kg/m²
   */
  public double most() {
    double most = 0;
    for (int month = 1; month <= MONTHS; month++) {
      most = Math.max(most, held(month));
    }
    return most;
  }

  /**
   * The month at the end of which most water is held; the first of equals in the order of the year
   * that began with {@link #firstMonth()}.
   *
   * @return 1 to 12; 1 if there is none
   */
  public int wettestMonth() {
    int best = Math.max(1, first);
    for (int i = 1; i < MONTHS; i++) {
      int month = (Math.max(1, first) - 1 + i) % MONTHS + 1;
      if (held(month) > held(best)) {
        best = month;
      }
    }
    return best;
  }

  /**
   * The plane that holds most in the wettest month.
   *
   * @return number of the plane
   */
  public int wettestPlane() {
    int best = 0;
    for (int plane = 1; plane < wall.planes().size(); plane++) {
      if (held(wettestMonth(), plane) > held(wettestMonth(), best)) {
        best = plane;
      }
    }
    return best;
  }

  /**
   * Water left when twelve months are over.
   *
   * @return kg/m²; 0 if all has dried
   */
  public double left() {
    return isWet() ? held((first + MONTHS - 2) % MONTHS + 1) : 0;
  }
}
