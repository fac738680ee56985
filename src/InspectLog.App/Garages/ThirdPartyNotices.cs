using System.Text;

namespace InspectLog.App.Garages;

/// <summary>What comes with the program and was made by others, read from THIRD-PARTY-NOTICES. The same file lies beside
/// the program; the one read here is built in, so that it is there whatever happens to that folder.</summary>
internal static class ThirdPartyNotices
{
    private const string Resource = "THIRD-PARTY-NOTICES";

    /// <summary>Stands before each work.</summary>
    private static readonly string Rule = new('=', 80);

    /// <summary>The whole file.</summary>
    public static string Text()
    {
        using var file = typeof(ThirdPartyNotices).Assembly.GetManifestResourceStream(Resource)!;
        using var reader = new StreamReader(file, Encoding.UTF8);
        return reader.ReadToEnd();
    }

    /// <summary>The works, in the order of the file.</summary>
    public static IReadOnlyList<ThirdPartyWork> Works() => [.. Text().Split($"\n{Rule}\n").Skip(1).Select(Work)];

    private static ThirdPartyWork Work(string section)
    {
        var parts = section.Split("\n\n", 2);
        var said = parts[0].Split('\n').Select(line => line.Split(": ", 2)).ToDictionary(line => line[0], line => line[1]);
        return new(said["Name"], said["Version"], said["Used for"], said["From"], said["Files"].Split(", "), said["Licence"], parts[1].Trim());
    }
}

/// <summary>One work of others.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Version">As its maker counts.</param>
/// <param name="Use">What the program uses it for.</param>
/// <param name="From">The package it came in.</param>
/// <param name="Files">Which of the program's files it is; a <c>*</c> stands for anything, and a resource built into a
/// library stands after the library and <c>!</c>.</param>
/// <param name="Licence">Short name of its licence.</param>
/// <param name="Text">The text of its licence.</param>
public sealed record ThirdPartyWork(
    string Name, string Version, string Use, string From, IReadOnlyList<string> Files, string Licence, string Text);
