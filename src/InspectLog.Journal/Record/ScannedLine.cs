namespace InspectLog.Journal.Record;

/// <summary>A line of a journal file read by itself, wherever it stands.</summary>
/// <param name="Start">Where it begins in the file, bytes.</param>
/// <param name="Entry">What it says; null where it is not sound.</param>
/// <param name="Problem">What is wrong with it; null where it is sound.</param>
/// <param name="IsEnded">Whether its end is there.</param>
internal readonly record struct ScannedLine(int Start, JournalEntry? Entry, string? Problem, bool IsEnded)
{
    private const byte LineEnd = (byte)'\n';

    /// <summary>The lines of a file.</summary>
    public static List<ScannedLine> Of(ReadOnlyMemory<byte> file)
    {
        var lines = new List<ScannedLine>();
        for (var start = 0; start < file.Length;)
        {
            var length = file.Span[start..].IndexOf(LineEnd);
            var line = Read(file.Slice(start, length < 0 ? file.Length - start : length), start);
            lines.Add(length < 0 ? line with { Entry = null, Problem = line.Problem ?? "its end is missing", IsEnded = false } : line);
            start = length < 0 ? file.Length : start + length + 1;
        }

        return lines;
    }

    private static ScannedLine Read(ReadOnlyMemory<byte> line, int start)
    {
        try
        {
            return new(start, EntryLine.Read(line), Problem: null, IsEnded: true);
        }
        catch (FormatException problem)
        {
            return new(start, Entry: null, problem.Message, IsEnded: true);
        }
    }
}
