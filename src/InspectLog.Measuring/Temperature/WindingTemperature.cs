namespace InspectLog.Measuring;

/// <summary>The temperature a copper winding was measured at, and the one its resistance is referred to.</summary>
/// <param name="At">Temperature of the winding when it was measured, °C.</param>
/// <param name="To">Temperature the value is wanted for, °C: 20 where limits do not say.</param>
/// <param name="HalfWidth">How far the winding's temperature may have been from <paramref name="At"/>, ±, in degrees
/// Celsius, 0 or more; taken as rectangular.</param>
/// <param name="InferredZero">Degrees below 0 °C at which copper's resistance would vanish if it fell on in a straight
/// line: see <see cref="Copper"/>.</param>
public sealed record WindingTemperature(
    double At, double To, double HalfWidth, double InferredZero = Copper.Iec60034)
{
    /// <summary>What a resistance at <see cref="At"/> is multiplied by to refer it to <see cref="To"/>.</summary>
    internal double Factor => (InferredZero + To) / (InferredZero + At);

    /// <summary>How much a referred resistance falls, as a share of itself, for each degree <see cref="At"/> is
    /// raised.</summary>
    internal double ShareForEachDegree => 1 / (InferredZero + At);
}
