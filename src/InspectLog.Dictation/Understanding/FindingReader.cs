using InspectLog.Checks;
using InspectLog.Dictation.Hearing;
using InspectLog.Dictation.Understanding.Saying;

namespace InspectLog.Dictation.Understanding;

/// <summary>Reads findings from a text: the likeliest of all its readings, by weights learned from the corpus and words taken
/// from the check sheet. Pure: the same text always gives the same findings.</summary>
public sealed class FindingReader
{
    private readonly LearnedReader _reader;

    /// <summary>A reader for one sheet. It can be shared between threads.</summary>
    /// <param name="sheet">The sheet whose checks are spoken of.</param>
    /// <param name="ownWords">The workshop's own words; one whose check or condition the sheet does not have says
    /// nothing.</param>
    public FindingReader(CheckSheet sheet, IReadOnlyList<OwnWord>? ownWords = null)
    {
        Sheet = sheet;
        OwnWords = ownWords ?? [];
        _reader = new(sheet, OwnWords);
    }

    /// <summary>The sheet it reads for.</summary>
    public CheckSheet Sheet { get; }

    /// <summary>The workshop's own words it knows.</summary>
    public IReadOnlyList<OwnWord> OwnWords { get; }

    /// <summary>The findings of a text, in the order spoken.</summary>
    /// <param name="text">What was said or heard.</param>
    /// <param name="openCheck">Id of the check open on the bench, which a text that names none may mean; or null.</param>
    public IReadOnlyList<Finding> Read(string text, string? openCheck = null) => _reader.Read(text, openCheck);

    /// <summary>The findings of what was heard. Beyond those of its text, a word the speech model was unsure of is
    /// marked.</summary>
    /// <param name="transcript">What was heard.</param>
    /// <param name="openCheck">Id of the check open on the bench; or null.</param>
    public IReadOnlyList<Finding> Read(Transcript transcript, string? openCheck = null) =>
        UnclearWords.Mark(Read(transcript.Text, openCheck), transcript.Words);
}
