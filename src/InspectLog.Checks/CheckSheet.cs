using InspectLog.Measuring;

namespace InspectLog.Checks;

/// <summary>An ordered, versioned list of checks, read from a JSON data file. An inspection pins the version and the
/// hash of the sheet it used.</summary>
/// <param name="Id">Identifier, such as <c>ignition-breakerless-6</c>.</param>
/// <param name="Version">Counts up with each change of content, from 1.</param>
/// <param name="Title">Name for people.</param>
/// <param name="Cylinders">How many cylinders per-cylinder checks have.</param>
/// <param name="Notice">The statement that the maker's manual and licensed practice come first.</param>
/// <param name="Checks">The checks in working order.</param>
/// <param name="Sha256">SHA-256 of the data file, lower-case hex.</param>
public sealed record CheckSheet(
    string Id,
    int Version,
    string Title,
    int Cylinders,
    string Notice,
    IReadOnlyList<Check> Checks,
    string Sha256)
{
    /// <summary>The rule that decides readings; the non-binary rule where the file names none. An inspection pins
    /// it.</summary>
    public DecisionRule Rule { get; init; } = DecisionRule.NonBinary;

    /// <summary>The check with this id, or null.</summary>
    public Check? Find(string checkId) => Checks.FirstOrDefault(check => check.Id == checkId);
}
