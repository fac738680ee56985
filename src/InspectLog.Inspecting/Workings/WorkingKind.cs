using InspectLog.Checks.Derived;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;

namespace InspectLog.Inspecting.Workings;

/// <summary>A derived figure that a page works out: what it asks for and how it is calculated.</summary>
/// <param name="Id">Name in the page's address.</param>
/// <param name="Title">Name for people.</param>
/// <param name="Says">What it tells, in one sentence.</param>
/// <param name="Fields">What it asks for, filled in from the inspection where that knows.</param>
/// <param name="Work">Calculates. An <see cref="ArgumentException"/> carries what is wrong, for the person who typed
/// it.</param>
public sealed record WorkingKind(
    string Id,
    string Title,
    string Says,
    Func<BenchScene, IReadOnlyList<WorkingField>> Fields,
    Func<WorkingInputs, BenchScene, IReadOnlyList<WorkedPart>> Work)
{
    /// <summary>Ids of the checks it belongs to.</summary>
    public IReadOnlyList<string> Checks { get; init; } = [];
}

/// <summary>One thing a working asks for.</summary>
/// <param name="Name">Field name.</param>
/// <param name="Label">Label for people.</param>
/// <param name="Unit">Unit of the value; empty for none.</param>
/// <param name="Value">What the inspection says, or a common value; empty where it has to be typed.</param>
/// <param name="Choices">Values to choose from; empty for a typed field.</param>
/// <param name="Hint">Where the value comes from or how to write it; empty for none.</param>
public sealed record WorkingField(
    string Name, string Label, string Unit, string Value, IReadOnlyList<string> Choices, string Hint = "")
{
    /// <summary>The reading the value was filled in from, and the unit it stands in; null for none.</summary>
    public (ReadingDecided Reading, Unit Unit)? Read { get; init; }

    /// <summary>Whether the value is still the one that was read.</summary>
    public bool IsAsRead => Read is { } read && Value == FromInspection.Text(read.Reading, read.Unit);
}

/// <summary>A part of a working as it is shown.</summary>
/// <param name="Heading">What it is about.</param>
/// <param name="Steps">The steps.</param>
/// <param name="Remarks">What follows from them, in sentences.</param>
/// <param name="Drawing">A drawing as SVG; null for none. Its facts are in the remarks too.</param>
public sealed record WorkedPart(
    string Heading, IReadOnlyList<Step> Steps, IReadOnlyList<string> Remarks, string? Drawing = null);

/// <summary>The page of one working.</summary>
/// <param name="Scene">The inspection whose figures are used.</param>
/// <param name="Kind">The working.</param>
/// <param name="Fields">Its fields, as typed or filled in.</param>
/// <param name="Parts">The working; empty when something is missing or wrong.</param>
/// <param name="Problem">What is missing or wrong; null when nothing is.</param>
/// <param name="All">All workings, to go to another.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record WorkingView(
    BenchScene Scene,
    WorkingKind Kind,
    IReadOnlyList<WorkingField> Fields,
    IReadOnlyList<WorkedPart> Parts,
    string? Problem,
    IReadOnlyList<WorkingKind> All,
    IReadOnlyList<Journal.GarageProblem> Problems);
