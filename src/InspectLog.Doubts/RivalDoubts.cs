namespace InspectLog.Doubts;

/// <summary>The words may as well give another value.</summary>
/// <param name="Check">Id of the check.</param>
/// <param name="Value">The value taken, base unit of the check.</param>
/// <param name="Other">The other value, base unit.</param>
public sealed record Competes(string Check, double Value, double Other) : Doubt;

/// <summary>The words may as well be said of another place.</summary>
/// <param name="Place">The other place; 0 for none in particular.</param>
public sealed record OtherPlace(int Place) : Doubt;

/// <summary>The words may as well say the opposite.</summary>
public sealed record PerhapsNegated : Doubt;

/// <summary>The words may as well be no finding at all.</summary>
public sealed record PerhapsNothing : Doubt;

/// <summary>Nothing in particular speaks against it, but it is seldom said in such words.</summary>
public sealed record SeldomSaidSo : Doubt;
