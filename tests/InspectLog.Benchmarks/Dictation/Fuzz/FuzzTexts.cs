using CsCheck;
using InspectLog.Checks;
using InspectLog.Dictation.Understanding;

namespace InspectLog.Benchmarks.Dictation.Fuzz;

/// <summary>Texts of all sorts for the reader to read: words of the sheet and of everyday speech, sentences of the corpus
/// gone wrong, words of the dictionary that mean nothing to it, figures and units, one thing over and over, letters
/// strung together, any characters at all. Some are a few words, some as long as a text may be.</summary>
internal sealed class FuzzTexts
{
    /// <summary>The most characters of a text.</summary>
    public const int Longest = 2000;

    private const int FewWords = 25;
    private const int ManyWords = 400;

    private static readonly string[] Talk =
        ("the a and or to of on at in is it was not no I we just about um er okay well so now then before after all every except both "
        + "same sorry scratch that make I mean goes doesn't stops set closed replaced cleaned put back pulled off new one two three four "
        + "five six seven eight nine ten eleven twelve thirteen twenty thirty hundred thousand point oh half quarter third k kilohms ohms "
        + "volts mm thou degrees weeks park capture Lee list bunt sri city read let free though").Split(' ');

    private static readonly string[] Figures =
    [
        "1", "2", "6.8", "9.850", "1.2.3.4.5.6", ".3", "3/4", "12,300", "0.35", "999999999999", "00", "½", "¾", "⅜", "point", "oh", "and", "a", "half", "to",
        "between", "hundred", "thousand", "one", "three", "eleven", "thirty", "thirty-five", "k", "K", "kΩ", "Ω", "ohms", "V", "volts", "mm", "thou", "°", "degrees",
        "BTDC", "±", "%", "psi", "#", "minus", "free", "for", "too", "won", "sic",
    ];

    private static readonly string[] Marks = ["-", ",", ".", "?", ":", ";", "#", "°", "Ω", "±", "…", "'s", "—", "(", ")", "/", "\n"];

    private readonly Gen<string> _phrase;
    private readonly Gen<string> _listed = Gen.OneOf(ListedWords());
    private readonly Gen<string> _sentence;
    private readonly Gen<string> _word;

    /// <summary>Texts about the checks of a sheet.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="sentences">Sentences that people say about it.</param>
    public FuzzTexts(CheckSheet sheet, IEnumerable<string> sentences)
    {
        _phrase = Gen.OneOf([.. sheet.Checks
            .SelectMany(check => check.Spoken.Subjects.Concat(check.Spoken.Parts).Concat(check.Conditions.SelectMany(condition => condition.Phrases)))
            .Distinct(StringComparer.Ordinal)]);
        _sentence = Gen.OneOf([.. sentences]);
        _word = Gen.Frequency((4, _phrase), (6, Gen.OneOf(Talk)), (2, Gen.OneOf(Figures)), (1, Gen.OneOf(Marks)), (1, Garbled));
    }

    /// <summary>Texts of every kind.</summary>
    public Gen<FuzzText> All => Gen.Frequency(
        (30, Of("words of the sheet", _word, FewWords)),
        (3, Of("words of the sheet, long", _word, ManyWords)),
        (20, Of("misheard", Misheard, FewWords)),
        (3, Of("misheard, long", Misheard, ManyWords)),
        (20, Kind("sentences gone wrong", Gen.Select(_sentence.Array[1, 3], Gen.Int, TextDamage.Of))),
        (2, Kind("sentences gone wrong, long", Gen.Select(_sentence.Array[20, 60], Gen.Int, TextDamage.Of))),
        (8, Of("figures and units", Gen.OneOf(Figures), FewWords)),
        (1, Of("figures and units, long", Gen.OneOf(Figures), ManyWords)),
        (3, Kind("one thing over and over", Gen.Select(Gen.OneOf(_word, _listed).Array[1, 4], Gen.OneOf(" ", ", ", ". ", ""), Gen.Int[1, Longest], Repeated))),
        (3, Of("letters strung together", Garbled, ManyWords)),
        (4, Kind("any characters", Gen.Char.Array[0, 60].Select(characters => new string(characters)))),
        (1, Kind("any characters, long", Gen.Char.Array[0, Longest].Select(characters => new string(characters)))),
        (2, Kind("any signs of any script", Gen.Int[0, 0x10FFFF].Where(System.Text.Rune.IsValid).Array[0, 200]
            .Select(signs => string.Concat(signs.Select(char.ConvertFromUtf32))))));

    private static Gen<string> Garbled => Gen.Char['a', 'z'].Array[1, 9].Select(letters => new string(letters));

    // Words that mean nothing to the reader beside some that do: what it looks up by sound.
    private Gen<string> Misheard => Gen.Frequency((5, _listed), (3, _phrase), (2, Gen.OneOf(Talk)), (1, Gen.OneOf(Figures)));

    private static Gen<FuzzText> Of(string kind, Gen<string> word, int most) =>
        Kind(kind, word.Array[most > FewWords ? FewWords : 0, most].Select(words => string.Join(' ', words)));

    private static Gen<FuzzText> Kind(string kind, Gen<string> text) =>
        text.Select(one => new FuzzText(kind, one.Length <= Longest ? one : one[..Longest]));

    private static string Repeated(string[] words, string between, int length)
    {
        var one = string.Join(' ', words) + between;
        return string.Concat(Enumerable.Repeat(one, length / one.Length + 1))[..length];
    }

    // Every word of the pronouncing dictionary that comes with the program.
    private static string[] ListedWords()
    {
        using var file = typeof(FindingReader).Assembly.GetManifestResourceStream("cmudict-en-us.dict")
            ?? throw new InvalidOperationException("The pronouncing dictionary is not embedded.");
        using var lines = new StreamReader(file);
        var words = new List<string>();
        while (lines.ReadLine() is { } line)
        {
            words.Add(line[..line.IndexOf(' ', StringComparison.Ordinal)]);
        }

        return [.. words.Where(word => !word.Contains('(', StringComparison.Ordinal))];
    }
}
