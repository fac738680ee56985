using InspectLog.Dictation.Hearing;

namespace InspectLog.Dictation.Understanding;

/// <summary>Reads what was heard: a text whose words are not all equally sure.</summary>
public static class HeardFindings
{
    /// <summary>A figure heard with less than this is doubted. The figures of the demo's recordings, all heard rightly,
    /// have 0.8 and more; a figure that is wrong may have as much, so this finds some of the wrong ones, not all.</summary>
    public const double ClearFigure = 0.6;

    /// <summary>The findings of a transcript, in the order spoken; doubtful where a figure in them was heard unclearly.</summary>
    /// <param name="reader">Reads the text.</param>
    /// <param name="transcript">What was heard.</param>
    /// <param name="openCheck">Id of the check open on the bench; or null.</param>
    public static IReadOnlyList<Finding> Read(this FindingReader reader, Transcript transcript, string? openCheck)
    {
        ArgumentNullException.ThrowIfNull(reader);
        ArgumentNullException.ThrowIfNull(transcript);
        return [.. reader.Read(transcript.Text, openCheck).Select(finding => Doubted(finding, transcript.Words))];
    }

    private static Finding Doubted(Finding finding, IReadOnlyList<HeardWord> words)
    {
        var unclear = words.FirstOrDefault(word => word.Probability < ClearFigure
            && word.At >= finding.Start && word.At < finding.End && word.Text.Any(char.IsAsciiDigit));
        return unclear is null
            ? finding
            : finding with { Doubt = Doubts.Join(finding.Doubt, $"\"{unclear.Text.TrimEnd('.', ',')}\" was heard unclearly") };
    }
}
