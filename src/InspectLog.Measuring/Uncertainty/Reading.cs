namespace InspectLog.Measuring;

/// <summary>What was read off: either displayed values or a bracket between two gauges. All values are in the base
/// unit of the quantity measured.</summary>
public abstract record Reading;

/// <summary>One displayed value, or several repeats of it.</summary>
/// <param name="Values">The values as read, at least one, in the order taken.</param>
/// <param name="Accuracy">Accuracy of the instrument that showed them.</param>
/// <param name="Resolution">Smallest displayed step, above 0.</param>
public sealed record DisplayedReading(IReadOnlyList<double> Values, Accuracy Accuracy, double Resolution) : Reading;

/// <summary>A value known only to lie between the largest gauge that goes and the smallest that does not.</summary>
/// <param name="Goes">The largest gauge that goes.</param>
/// <param name="Stops">The smallest gauge that does not; above <paramref name="Goes"/>.</param>
public sealed record Bracket(double Goes, double Stops) : Reading;
