using System.Collections.Frozen;

namespace InspectLog.Dictation.Control;

/// <summary>The phrases that are commands. Each has two words or more, and none of them begins a finding.</summary>
/// <remarks>The first phrase of each command is the one to teach. These were chosen by ear of the shipped model: on four
/// synthetic voices it wrote each of them rightly, while "undo that" came out as "and do that", "say again" as "see you
/// again" and "read it back" as "Reddit back". The other phrases are what people say in their place.</remarks>
public static class ControlPhrases
{
    private static readonly FrozenDictionary<ControlWord, string[]> ByWord = new Dictionary<ControlWord, string[]>
    {
        [ControlWord.Confirm] = ["confirm that", "confirm it", "confirm this", "confirm the last", "confirm the last one"],
        [ControlWord.Drop] = ["drop that", "drop it", "drop this", "drop the last", "drop the last one"],
        [ControlWord.TakeBack] = ["take that back", "take it back"],
        [ControlWord.NextCheck] = ["next check", "the next check", "go to the next check"],
        [ControlWord.Repeat] = ["repeat that", "say it again", "say that again", "what was that"],
        [ControlWord.Stop] = ["stop listening"],
    }.ToFrozenDictionary();

    /// <summary>The phrase to teach for a command.</summary>
    public static string Of(ControlWord word) => ByWord[word][0];

    /// <summary>Every phrase with its command.</summary>
    internal static IReadOnlyDictionary<string, ControlWord> All { get; } = ByWord
        .SelectMany(entry => entry.Value.Select(phrase => KeyValuePair.Create(phrase, entry.Key)))
        .ToFrozenDictionary(StringComparer.Ordinal);
}
