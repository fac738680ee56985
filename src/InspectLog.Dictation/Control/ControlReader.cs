using System.Collections.Frozen;
using System.Text;
using InspectLog.Dictation.Hearing;
using InspectLog.Dictation.Understanding.Sounds;
using InspectLog.Doubts;

namespace InspectLog.Dictation.Control;

/// <summary>Reads whether an utterance is a command. Pure.</summary>
/// <remarks>A command is a whole utterance and nothing else: "the lead was confirmed" and "confirm that lead two is
/// burnt" are none. What only sounds like a command, or was heard faintly, is asked for again.</remarks>
public static class ControlReader
{
    /// <summary>A word heard with less than this is asked for again. Rightly heard commands of four synthetic voices
    /// without noise had 0.33 or more.</summary>
    private const double FaintestWord = 0.30;

    /// <summary>Letters in which a text may differ from a phrase to be asked about: "confirmed that".</summary>
    private const int LettersAstray = 2;

    /// <summary>How far a text may sound from a phrase to be asked about, by sound: "keep that back", "necks checked". Of the
    /// corpus's utterances without a command two of 1,581 sound as near, of which one is a finding, and a finding comes
    /// first. Nearest of those farther off: 0.23.</summary>
    private const double SoundsAstray = 0.2;

    private static readonly FrozenDictionary<string, Phone[]> Sounds =
        ControlPhrases.All.Keys.ToFrozenDictionary(phrase => phrase, SoundsOf, StringComparer.Ordinal);

    private static readonly int LongestPhrase = ControlPhrases.All.Keys.Max(phrase => phrase.Length);

    /// <summary>The command that an utterance is; null when it is none.</summary>
    /// <param name="transcript">What was heard.</param>
    public static HeardControl? Read(Transcript transcript)
    {
        if (Letters(transcript.Text) is not { } said)
        {
            return null;
        }

        if (ControlPhrases.All.TryGetValue(said, out var word))
        {
            var faint = transcript.Words.Count == 0 || transcript.Words.Min(heard => heard.Probability) < FaintestWord;
            return new(word, faint ? new CommandFaint() : null);
        }

        return Nearest(said) is { } phrase
            ? new(ControlPhrases.All[phrase], new CommandHeardAs(transcript.Text.Trim()))
            : null;
    }

    private static string? Nearest(string said)
    {
        var spelt = ControlPhrases.All.Keys.MinBy(phrase => Distance(said, phrase))!;
        if (Distance(said, spelt) <= LettersAstray)
        {
            return spelt;
        }

        var sounds = said.Contains(' ', StringComparison.Ordinal) ? SoundsOf(said) : [];
        return Sounds.Select(phrase => (phrase.Key, Far: SoundAlignment.Distance(sounds, phrase.Value, SoundsAstray)))
            .Where(one => one.Far is not null).OrderBy(one => one.Far).ThenBy(one => one.Key, StringComparer.Ordinal)
            .Select(one => one.Key).FirstOrDefault();
    }

    private static Phone[] SoundsOf(string words) =>
        [.. words.Split(' ').SelectMany(word => Pronunciations.Of(word) is [var usual, ..] ? usual : [])];

    /// <summary>The words in lower case, one space between them; null where there are none, more than a phrase has, or
    /// figures.</summary>
    private static string? Letters(string text)
    {
        var said = new StringBuilder(LongestPhrase);
        foreach (var rune in text.EnumerateRunes())
        {
            if (said.Length > LongestPhrase + LettersAstray || Rune.IsNumber(rune))
            {
                return null;
            }

            if (Rune.IsLetter(rune))
            {
                said.Append(Rune.ToLowerInvariant(rune));
            }
            else if (rune.Value is not ('\'' or '\u2019') && said.Length > 0 && said[^1] != ' ')
            {
                said.Append(' ');
            }
        }

        return said.ToString().TrimEnd() is { Length: > 0 } words ? words : null;
    }

    /// <summary>How many letters have to be put in, taken out or exchanged (Levenshtein).</summary>
    private static int Distance(string said, string phrase)
    {
        var row = Enumerable.Range(0, phrase.Length + 1).ToArray();
        for (var i = 1; i <= said.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= phrase.Length; j++)
            {
                var exchanged = diagonal + (said[i - 1] == phrase[j - 1] ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.Min(exchanged, Math.Min(row[j], row[j - 1]) + 1);
            }
        }

        return row[^1];
    }
}
