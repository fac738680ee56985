using System.Diagnostics;
using System.Globalization;
using CsCheck;
using InspectLog.Checks;
using InspectLog.Dictation.Understanding;

namespace InspectLog.Benchmarks.Dictation;

/// <summary>Reads a great many generated texts: words of the sheet and of everyday speech, numbers, marks, letters
/// strung together, any characters at all, up to 2,000 characters. Tells how many faults there were and what the
/// slowest took.</summary>
internal static class ReaderFuzz
{
    /// <summary>The longest text that is tried.</summary>
    public const int LongestText = 2000;

    // A slow reading is timed again, so that another program's turn on the processor is not counted.
    private const double Suspect = 15;
    private const int Again = 10;

    private static readonly string[] Talk =
        ("the a and or to of on at in is it was not no I we just about um er okay well so now then before after all every except both "
        + "same sorry scratch that make I mean goes doesn't stops set closed replaced cleaned put back pulled off new one two three four "
        + "five six seven eight nine ten eleven twelve thirteen twenty thirty hundred thousand point oh half quarter third k kilohms ohms "
        + "volts mm thou degrees weeks park capture Lee list bunt sri city read let free though").Split(' ');

    private static readonly string[] Written =
        ["1", "2", "6.8", "9.850", "1.2.3.4.5.6", ".3", "3/4", "12,300", "0.35", "-", ",", ".", "?", ":", ";", "#", "°", "Ω", "¾", "±", "…", "'s", "999999999999"];

    /// <summary>Texts to read.</summary>
    public static Gen<string> Texts(CheckSheet sheet)
    {
        var phrases = sheet.Checks
            .SelectMany(check => check.Spoken.Subjects.Concat(check.Spoken.Parts).Concat(check.Conditions.SelectMany(condition => condition.Phrases)))
            .Distinct().ToArray();
        var garbled = Gen.Char['a', 'z'].Array[1, 9].Select(letters => new string(letters));
        var word = Gen.Frequency((4, Gen.OneOf(phrases)), (6, Gen.OneOf(Talk)), (3, Gen.OneOf(Written)), (1, garbled));
        return Gen.Frequency(
            (20, word.Array[0, 25].Select(words => Joined(words))),
            (2, word.Array[25, 400].Select(words => Joined(words))),
            (1, garbled.Array[0, 300].Select(words => Joined(words))),
            (2, Gen.String.Select(text => text)),
            (1, Gen.Char.Array[0, LongestText].Select(characters => new string(characters))));
    }

    /// <summary>Reads that many texts.</summary>
    public static int Run(FindingReader reader, int count, TextWriter output)
    {
        var (worst, slowest) = (0.0, "");
        var all = Stopwatch.GetTimestamp();
        Texts(reader.Sheet).Sample(
            text =>
            {
                var time = TimeOf(reader, text);
                if (time > worst)
                {
                    (worst, slowest) = (time, text);
                }
            },
            iter: count,
            threads: 1);
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{count} texts read without a fault in {Stopwatch.GetElapsedTime(all).TotalSeconds:0} s; the slowest took {worst:0.0} ms ({slowest.Length} characters)"));
        return 0;
    }

    private static double TimeOf(FindingReader reader, string text)
    {
        var time = Once(reader, text);
        for (var i = 0; i < Again && time > Suspect; i++)
        {
            time = Math.Min(time, Once(reader, text));
        }

        return time;
    }

    private static double Once(FindingReader reader, string text)
    {
        var start = Stopwatch.GetTimestamp();
        reader.Read(text);
        return Stopwatch.GetElapsedTime(start).TotalMilliseconds;
    }

    private static string Joined(string[] words)
    {
        var text = string.Join(' ', words);
        return text.Length <= LongestText ? text : text[..LongestText];
    }
}
