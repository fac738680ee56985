using InspectLog.Checks;

namespace InspectLog.Dictation.Understanding;

/// <summary>Reads findings from a text, by a grammar driven by the check sheet. Pure: the same text always gives the
/// same findings.</summary>
public sealed class FindingReader(CheckSheet sheet)
{
    /// <summary>The sheet it reads for.</summary>
    public CheckSheet Sheet { get; } = sheet;

    /// <summary>The findings of a text, in the order spoken.</summary>
    /// <param name="text">What was said or heard.</param>
    /// <param name="openCheck">Id of the check open on the bench, which a text that names none may mean; or null.</param>
    public IReadOnlyList<Finding> Read(string text, string? openCheck = null) =>
        throw new NotSupportedException("Dictation room");
}
