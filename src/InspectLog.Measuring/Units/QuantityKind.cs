namespace InspectLog.Measuring;

/// <summary>What a value is a measure of: its kind of quantity (VIM 1.2). Each kind has one base unit in which
/// values are stored and compared.</summary>
public enum QuantityKind
{
    /// <summary>Electrical resistance; base unit ohm (Ω).</summary>
    Resistance,

    /// <summary>Electric potential difference; base unit volt (V).</summary>
    Voltage,

    /// <summary>Length, such as a gap; base unit millimetre (mm), the unit gauges are marked in.</summary>
    Length,

    /// <summary>Angle, of the crankshaft where a check does not say another; base unit degree (°). Advance before top dead
    /// centre is positive.</summary>
    Angle,

    /// <summary>Electric current; base unit ampere (A).</summary>
    Current,

    /// <summary>Speed of rotation; base unit revolution per minute (rpm).</summary>
    Speed,

    /// <summary>Temperature; base unit degree Celsius (°C).</summary>
    Temperature,

    /// <summary>Pressure above that of the air around, negative for a vacuum; base unit kilopascal (kPa).</summary>
    Pressure,

    /// <summary>Torque; base unit newton metre (N·m).</summary>
    Torque,

    /// <summary>Distance driven; base unit kilometre (km).</summary>
    Distance,

    /// <summary>Capacitance; base unit microfarad (µF), the unit condensers are marked in.</summary>
    Capacitance,

    /// <summary>Inductance; base unit millihenry (mH).</summary>
    Inductance,

    /// <summary>Duration; base unit second (s).</summary>
    Time,

    /// <summary>Share of a whole, such as what leaks of the air that was let in; base unit percent (%).</summary>
    Ratio,

    /// <summary>Density, such as that of battery acid; base unit gram per cubic centimetre (g/cm³), in which it has the
    /// same figures as the specific gravity a hydrometer is marked in.</summary>
    Density,
}
