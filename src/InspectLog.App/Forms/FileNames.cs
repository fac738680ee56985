namespace InspectLog.App.Forms;

/// <summary>Names of files that were sent, as they are shown.</summary>
public static class FileNames
{
    /// <summary>Longest name shown: it stands in a sentence.</summary>
    private const int Longest = 80;

    private const char Isolate = '\u2068';
    private const char EndOfIsolate = '\u2069';

    /// <summary>The name without folders and signs that do not show, isolated: whichever way its letters run, they do not
    /// turn the words around it (Unicode, UAX #9: first strong isolate).</summary>
    public static string Shown(string name)
    {
        var last = PlainText.Of(name).Replace('\\', '/').Split('/')[^1].Trim();
        var shown = last.Length == 0 ? "Photo" : last.Length > Longest ? $"{Start(last)}…" : last;
        return shown.All(char.IsAscii) ? shown : $"{Isolate}{shown}{EndOfIsolate}";
    }

    /// <summary>A letter of two units is not cut in two.</summary>
    private static string Start(string name) => name[..(char.IsHighSurrogate(name[Longest - 1]) ? Longest - 1 : Longest)];
}
