using System.Collections.Immutable;
using System.Globalization;
using InspectLog.Journal.Record;

namespace InspectLog.Journal;

/// <summary>What is wrong with a journal file as it was read: it is then only looked at, never written to.</summary>
/// <param name="Path">The file.</param>
/// <param name="Lines">The lines that are not sound, in order; none where the file could not be read at all.</param>
/// <param name="Unreadable">Why the file could not be read; null where it could.</param>
internal sealed record JournalDamage(string Path, ImmutableList<BrokenLine> Lines, string? Unreadable)
{
    private const int MostLinesNamed = 5;

    /// <summary>Whether all of it is the remains of a last write that never finished.</summary>
    public bool IsUnfinishedWrite => Lines is [{ IsUnfinished: true }];

    /// <summary>Why nothing is written to the journal, for the person whose entry was refused.</summary>
    public string Refusal => Unreadable is { } why
        ? $"This journal can only be looked at, because {Path} cannot be read ({why})."
        : $"This journal can only be read, because {WhatLine()} of {Path} is damaged: {Lines[0].Reason}.";

    /// <summary>What is wrong and what to do.</summary>
    /// <param name="name">What people call the journal's vehicle, or "the workshop".</param>
    public string InWords(string name) => Unreadable is { } why
        ? $"The journal of {name} cannot be read ({why}), so nothing of it is shown, and nothing is written to it. "
            + $"Look after the file {Path}, or put it back from a copy, and start InspectLog again."
        : $"{NamedLines(name)} What stands before and after it is shown, and nothing more is written to this journal. "
            + "Put the file back from a copy and start InspectLog again.";

    private string NamedLines(string name) => Lines.Count == 1
        ? $"Line {Lines[0].Line} of the journal of {name} is damaged: {Lines[0].Reason}."
        : $"{Lines.Count} lines of the journal of {name} are damaged: {string.Join("; ", Lines.Take(MostLinesNamed).Select(Named))}"
            + (Lines.Count > MostLinesNamed ? $"; and {Lines.Count - MostLinesNamed} more, which \"inspectlog verify\" names." : ".");

    private static string Named(BrokenLine line) => $"line {line.Line}, {line.Reason}";

    private string WhatLine() => $"line {Lines[0].Line.ToString(CultureInfo.InvariantCulture)}";
}
