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

    /// <summary>Crankshaft angle; base unit degree (°). Advance before top dead centre is positive.</summary>
    Angle,
}
