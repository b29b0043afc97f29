package org.shopclime.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** What must hold for any clear sky and any tilted face. */
class SkyProperties {

  @Property
  void clearSkyKeepsItsBudget(
      @ForAll @DoubleRange(min = 0.51, max = 90) double altitude,
      @ForAll @IntRange(min = 1, max = 366) int day,
      @ForAll @DoubleRange(min = 60_000, max = 105_000) double pressure,
      @ForAll @DoubleRange(min = 0, max = 8) double water,
      @ForAll @DoubleRange(min = 0, max = 0.6) double aerosol) {
    ClearSky sky = BirdClearSky.at(altitude, day, pressure, 0.3, water, aerosol, 0.2);
    double outside = new AstronomicalDay(day).extraterrestrialNormal();
    double vertical = Math.sin(Math.toRadians(altitude));
    assertThat(sky.directNormal()).isLessThan(outside);
    assertThat(sky.globalHorizontal()).isLessThan(outside * vertical);
    assertThat(sky.globalHorizontal())
        .isCloseTo(sky.directNormal() * vertical + sky.diffuseHorizontal(), within(1e-9));
    assertThat(sky.diffuseHorizontal()).isPositive();

    ClearSky dustier = BirdClearSky.at(altitude, day, pressure, 0.3, water, aerosol + 0.05, 0.2);
    assertThat(dustier.directNormal()).isLessThan(sky.directNormal());
    assertThat(dustier.globalHorizontal()).isLessThan(sky.globalHorizontal());
    ClearSky wetter = BirdClearSky.at(altitude, day, pressure, 0.3, water + 0.5, aerosol, 0.2);
    assertThat(wetter.directNormal()).isLessThan(sky.directNormal());
    ClearSky moreOzone = BirdClearSky.at(altitude, day, pressure, 0.4, water, aerosol, 0.2);
    assertThat(moreOzone.directNormal()).isLessThan(sky.directNormal());
    ClearSky higherUp = BirdClearSky.at(altitude, day, pressure - 5000, 0.3, water, aerosol, 0.2);
    assertThat(higherUp.directNormal()).isGreaterThan(sky.directNormal());
    ClearSky snow = BirdClearSky.at(altitude, day, pressure, 0.3, water, aerosol, 0.8);
    assertThat(snow.directNormal()).isEqualTo(sky.directNormal());
    assertThat(snow.diffuseHorizontal()).isGreaterThan(sky.diffuseHorizontal());
  }

  @Property
  void levelFaceReceivesWhatTheLevelGets(
      @ForAll @DoubleRange(min = 5.01, max = 90) double altitude,
      @ForAll @DoubleRange(min = 0, max = 360) double azimuth,
      @ForAll @DoubleRange(min = 0, max = 1000) double direct,
      @ForAll @DoubleRange(min = 0.1, max = 500) double diffuse) {
    SunAngles sun = new SunAngles(altitude, azimuth);
    FaceSun face = PerezSky.on(0, 180, sun, direct, diffuse, 100, 0.2);
    double vertical = Math.sin(Math.toRadians(altitude));
    assertThat(face.total()).isCloseTo(direct * vertical + diffuse, within(1e-6));
    assertThat(face.ground()).isZero();
  }

  @Property
  void mirroredFacesUnderAMirroredSun(
      @ForAll @DoubleRange(min = 0, max = 180) double tilt,
      @ForAll @DoubleRange(min = 0, max = 360) double face,
      @ForAll @DoubleRange(min = -10, max = 90) double altitude,
      @ForAll @DoubleRange(min = 0, max = 360) double azimuth,
      @ForAll @DoubleRange(min = 0, max = 1000) double direct,
      @ForAll @DoubleRange(min = 0, max = 500) double diffuse) {
    FaceSun one =
        PerezSky.on(tilt, face, new SunAngles(altitude, azimuth), direct, diffuse, 172, 0.2);
    FaceSun other =
        PerezSky.on(
            tilt, 360 - face, new SunAngles(altitude, 360 - azimuth), direct, diffuse, 172, 0.2);
    assertThat(one.total()).isCloseTo(other.total(), within(1e-6));
    assertThat(one.incidenceDeg()).isCloseTo(other.incidenceDeg(), within(1e-4));
    if (one.incidenceDeg() >= 90 || altitude <= 0) {
      assertThat(one.beam()).isZero();
    } else {
      assertThat(one.beam())
          .isCloseTo(direct * Math.cos(Math.toRadians(one.incidenceDeg())), within(1e-6));
    }
    assertThat(one.sky()).isNotNegative();
    assertThat(one.ground()).isNotNegative();
  }

  @Property
  void withTheSunDownTheSkyIsEven(
      @ForAll @DoubleRange(min = 0, max = 180) double tilt,
      @ForAll @DoubleRange(min = -90, max = 0) double altitude,
      @ForAll @DoubleRange(min = 0, max = 500) double diffuse) {
    FaceSun face = PerezSky.on(tilt, 90, new SunAngles(altitude, 10), 300, diffuse, 1, 0.3);
    double up = (1 + Math.cos(Math.toRadians(tilt))) / 2;
    assertThat(face.beam()).isZero();
    assertThat(face.sky()).isCloseTo(diffuse * up, within(1e-9));
    assertThat(face.ground()).isCloseTo(0.3 * diffuse * (1 - up), within(1e-9));
  }

  @Property
  void skyIsColderThanTheAirAndWarmsWithCloudAndDamp(
      @ForAll @DoubleRange(min = -30, max = 45) double dryBulb,
      @ForAll @DoubleRange(min = 2, max = 30) double depression,
      @ForAll @DoubleRange(min = 0, max = 9) double cloud) {
    double dew = Math.min(28, dryBulb - depression);
    double clark = SkyTemperature.clarkAllen(dryBulb, dew, cloud);
    assertThat(clark).isLessThan(dryBulb);
    assertThat(SkyTemperature.clarkAllen(dryBulb, dew, cloud + 1)).isGreaterThan(clark);
    assertThat(SkyTemperature.clarkAllen(dryBulb, dew - 1, cloud)).isLessThan(clark);
    double martin = SkyTemperature.martinBerdahl(dryBulb, dew, 12, 101_325, cloud, 1000);
    assertThat(martin).isLessThan(dryBulb);
    assertThat(SkyTemperature.martinBerdahl(dryBulb, dew, 12, 101_325, cloud + 1, 1000))
        .isGreaterThan(martin);
    assertThat(SkyTemperature.martinBerdahl(dryBulb, dew, 0, 101_325, cloud, 1000))
        .isGreaterThan(martin);
    assertThat(SkyTemperature.martinBerdahl(dryBulb, dew, 12, 90_000, cloud, 1000))
        .isLessThan(martin);
    assertThat(SkyTemperature.martinBerdahl(dryBulb, dew, 12, 101_325, cloud + 0.01, 3000))
        .isLessThan(SkyTemperature.martinBerdahl(dryBulb, dew, 12, 101_325, cloud + 0.01, 1000));
  }
}
