namespace InspectLog.Checks;

/// <summary>A part that checks look at, take off or switch on.</summary>
/// <param name="Id">Identifier within the sheet, such as <c>plug-lead</c>.</param>
/// <param name="Name">What people call it, as within a sentence: "plug lead".</param>
/// <param name="PerPlace">Whether there is one for each cylinder, or for each place of its checks, so that taking off number 2 leaves the others on.</param>
public sealed record Part(string Id, string Name, bool PerPlace);
