namespace InspectLog.Doubts;

/// <summary>Which of the places of a check is meant was not said.</summary>
/// <param name="Check">Id of the check.</param>
/// <param name="Noun">What one of its places is called: "plug".</param>
public sealed record PlaceUnnamed(string Check, string Noun) : Doubt;

/// <summary>No numbers were said, and it was taken as all places.</summary>
/// <param name="Places">How many there are.</param>
public sealed record TakenAsAll(int Places) : Doubt;

/// <summary>No cylinders were named, and as many values as there are were taken in order.</summary>
public sealed record TakenInOrder : Doubt;

/// <summary>"Any" was said without a "no" or "not".</summary>
public sealed record AnyWithoutNot : Doubt;

/// <summary>There are not as many values as places.</summary>
/// <param name="Values">How many values were said.</param>
/// <param name="Places">How many places were named.</param>
public sealed record ValuesForPlaces(int Values, int Places) : Doubt;

/// <summary>Which cylinders are at which end is not known: "the front three".</summary>
public sealed record EndUnknown : Doubt;

/// <summary>It may be of those last looked at: "the last three I did".</summary>
public sealed record OfLastLookedAt : Doubt;

/// <summary>The count of cylinders and the value may be one number.</summary>
public sealed record CountOrValue : Doubt;

/// <summary>The cylinder and the value may be one number.</summary>
public sealed record CylinderOrValue : Doubt;

/// <summary>Where the count begins was not said: "every second lead".</summary>
public sealed record CountStartUnsaid : Doubt;

/// <summary>No part was named that is counted: "four onwards".</summary>
public sealed record CountedUnnamed : Doubt;
