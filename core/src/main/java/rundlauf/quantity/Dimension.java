package rundlauf.quantity;

/** What kind of quantity a unit measures. Stiffness and force per length are one: N/m. */
public enum Dimension {
  NUMBER,
  LENGTH,
  ANGLE,
  MASS,
  FORCE,
  STIFFNESS,
  COMPLIANCE,
  TORQUE,
  FREQUENCY,
  POWER,
  VOLTAGE,
  CURRENT,
  RESISTANCE,
  TIME,
  VELOCITY,
  PRESSURE,
  TEMPERATURE,
  ACCELERATION,
  VOLUME_RATE,
  FREQUENCY_PER_POWER,
  GROWTH_PER_TEMPERATURE
}
