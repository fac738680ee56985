using InspectLog.Measuring;

namespace InspectLog.Checks;

/// <summary>An ordered, versioned list of checks, read from a JSON data file. An inspection pins the version and the
/// hash of the sheet it used.</summary>
/// <param name="Id">Identifier, such as <c>ignition-breakerless</c>.</param>
/// <param name="Version">Counts up with each change of content, from 1.</param>
/// <param name="Title">Name for people.</param>
/// <param name="Cylinders">How many places checks have that have none of their own: the vehicle's number of cylinders once
/// <see cref="For"/> gave the sheet for it, before that the usual one of those it is for.</param>
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

    /// <summary>How expanded uncertainties are found: from the distribution, at the coverage the file names, 95.45 % where it
    /// names none. An inspection pins its own, which is chosen when it is started.</summary>
    public Evaluation Evaluation { get; init; } = Evaluation.Default;

    /// <summary>The number of cylinders where nothing says another: of the command line, for a sheet that is for it.
    /// </summary>
    public const int UsualCylinders = 6;

    /// <summary>For which numbers of cylinders it is, in rising order; at least one.</summary>
    public IReadOnlyList<int> CylinderCounts { get; init; } = [Cylinders];

    /// <summary>Ids of the earlier sheets it goes on from: a check of the same id is the same check.</summary>
    public IReadOnlyList<string> Continues { get; init; } = [];

    /// <summary>Whether it is for engines with so many cylinders.</summary>
    public bool Fits(int cylinders) => CylinderCounts.Contains(cylinders);

    /// <summary>The sheet with as many places as an engine has cylinders.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is not for such engines.</exception>
    public CheckSheet For(int cylinders) => Fits(cylinders)
        ? this with { Cylinders = cylinders }
        : throw new ArgumentOutOfRangeException(
            nameof(cylinders), cylinders, $"The sheet {Id} is for {ListedNumbers.OneOf(CylinderCounts)} cylinders.");

    /// <summary>Whether a check of another sheet is the same as the one of that id here: the other is this sheet, or one
    /// goes on from the other.</summary>
    /// <param name="sheetId">Id of the other sheet.</param>
    public bool IsOneWith(string sheetId) =>
        BuiltInSheets.FamilyOf(sheetId) == BuiltInSheets.FamilyOf(Id) || Continues.Contains(sheetId);

    /// <summary>The numbers of a check's places, 1 and up; none for a check done once.</summary>
    public IEnumerable<int> PlacesOf(Check check) => Enumerable.Range(1, check.Places?.CountFor(Cylinders) ?? 0);

    /// <summary>The checks about a part, in working order: what was taken off under one of them can be put back under
    /// another.</summary>
    public IReadOnlyList<Check> ChecksSharing(Part part) => [.. Checks.Where(check => check.Parts.Contains(part))];

    /// <summary>The check with this id, or null.</summary>
    public Check? Find(string checkId) => Checks.FirstOrDefault(check => check.Id == checkId);
}
