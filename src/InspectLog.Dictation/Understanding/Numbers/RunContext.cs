namespace InspectLog.Dictation.Understanding.Numbers;

/// <summary>What is known around a run of numbers.</summary>
/// <param name="PlaceNounBefore">Whether a word that announces a cylinder stands right before the run.</param>
/// <param name="PlaceKnown">Whether a cylinder was already named.</param>
/// <param name="Cylinders">How many cylinders there are.</param>
/// <param name="Between">Whether "between" or "from" stands before the run.</param>
/// <param name="Listing">Whether the cylinders of a list still wait for their values.</param>
/// <param name="ValueDue">Whether a value has to be among the numbers, since a quantity was named and nothing follows.
/// </param>
/// <param name="Marked">Whether "number" or the like stands right before the run.</param>
internal readonly record struct RunContext(bool PlaceNounBefore, bool PlaceKnown, int Cylinders, bool Between, bool Listing, bool ValueDue,
    bool Marked);
