namespace InspectLog.Doubts;

/// <summary>The value lies outside the span of values the check can sensibly have.</summary>
/// <param name="Check">Id of the check.</param>
/// <param name="Value">The value, base unit of the check.</param>
/// <param name="From">Where the span begins, base unit.</param>
/// <param name="To">Where it ends, base unit.</param>
public sealed record OutsidePlausibleSpan(string Check, double Value, double From, double To) : Doubt;

/// <summary>The unit that was said measures something else.</summary>
/// <param name="Unit">Symbol of the unit said.</param>
/// <param name="Check">Id of the check.</param>
/// <param name="Right">Symbol of the unit the check is measured in.</param>
public sealed record WrongUnit(string Unit, string Check, string Right) : Doubt;

/// <summary>The word that was said stands for two units, and both fit.</summary>
/// <param name="Unit">Symbol of the one taken.</param>
/// <param name="Other">Symbol of the other.</param>
public sealed record EitherUnit(string Unit, string Other) : Doubt;

/// <summary>No unit was said, and two fit.</summary>
/// <param name="Unit">Symbol of the one taken.</param>
/// <param name="Other">Symbol of the other.</param>
public sealed record UnitUnsaid(string Unit, string Other) : Doubt;

/// <summary>The figures of the number were said apart: "five k five".</summary>
public sealed record FiguresSaidApart : Doubt;

/// <summary>The figures of the number were written apart: "12 2".</summary>
public sealed record FiguresWrittenApart : Doubt;

/// <summary>The figures were written as one number and taken for several.</summary>
public sealed record FiguresWrittenTogether : Doubt;

/// <summary>What was written as a decimal may be a fraction: "3.4" for three quarters.</summary>
/// <param name="Over">The figure before the point.</param>
/// <param name="Under">The figure after it.</param>
public sealed record PointOrSlash(int Over, int Under) : Doubt;

/// <summary>A number outside the limits sounds like one within them: thirteen and thirty.</summary>
/// <param name="Number">The number heard.</param>
/// <param name="Twin">The other.</param>
public sealed record SoundsLikeNumber(int Number, int Twin) : Doubt;

/// <summary>Only a bound was said, not the value: "just under nine".</summary>
public sealed record OnlyBound : Doubt;

/// <summary>It was said as one end of a range.</summary>
public sealed record SaidAsRange : Doubt;

/// <summary>Only a number was said, among other words, and only the open check makes a value of it.</summary>
public sealed record BareNumber : Doubt;

/// <summary>The gauge that goes is not smaller than the one that stops.</summary>
public sealed record GaugesReversed : Doubt;

/// <summary>No check was named.</summary>
public sealed record CheckUnnamed : Doubt;

/// <summary>It may be of either of two checks.</summary>
/// <param name="Check">Id of the one taken.</param>
/// <param name="Other">Id of the other.</param>
public sealed record EitherCheck(string Check, string Other) : Doubt;

/// <summary>The words may mean either of two conditions.</summary>
/// <param name="Condition">The one taken.</param>
/// <param name="Other">The other.</param>
public sealed record EitherCondition(string Condition, string Other) : Doubt;

/// <summary>Something is wrong, and what was not said.</summary>
public sealed record FaultUnsaid : Doubt;

/// <summary>The speaker was not sure: "I think".</summary>
public sealed record Hedged : Doubt;
