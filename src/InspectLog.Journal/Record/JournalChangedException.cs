namespace InspectLog.Journal.Record;

/// <summary>A line of a journal is not the one that was there when it was opened: the disk fails, or something else wrote to the
/// file.</summary>
/// <param name="place">The file.</param>
/// <param name="line">The line, from 1.</param>
public sealed class JournalChangedException(string place, int line)
    : IOException(FormattableString.Invariant(
        $"Line {line} of {place} is not what it was when it was opened: another program changed it, or the disk fails. Start InspectLog again; it then says what is damaged."));
