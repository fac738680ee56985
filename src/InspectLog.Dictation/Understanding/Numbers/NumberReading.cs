namespace InspectLog.Dictation.Understanding.Numbers;

/// <summary>One way to read the number that starts at a token.</summary>
/// <param name="Next">The token after it.</param>
/// <param name="Value">The number. Decimal, so that 12 thou stays exactly 0.3048 mm.</param>
/// <param name="Cost">How unlikely this reading is in itself; 0 for the plain one.</param>
/// <param name="Whole">Whether it is a plain whole number, which may name a cylinder.</param>
/// <param name="Doubt">Why a person should look twice; null for a plain reading.</param>
internal readonly record struct NumberReading(int Next, decimal Value, double Cost, bool Whole, string? Doubt = null);
