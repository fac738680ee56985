using System.Security.Cryptography;

namespace InspectLog.Tests;

/// <summary>The SHA256SUMS of folders with files made by others, or recorded. <c>tests/sums</c> writes those of the tests
/// anew.</summary>
internal static class ListedHashes
{
    /// <summary>The list of a folder: hashes by file, files below it with a slash.</summary>
    public static IReadOnlyDictionary<string, string> Of(string folder) =>
        File.ReadAllLines(Path.Combine(folder, "SHA256SUMS")).Select(line => line.Split("  ")).ToDictionary(parts => parts[1], parts => parts[0]);

    /// <summary>Holds the files of a folder to its list: each is listed with its hash, and nothing is listed that is not
    /// there.</summary>
    /// <param name="folder">The folder with the list.</param>
    /// <param name="patterns">Names of the files that have to be listed, such as <c>*.wav</c>.</param>
    public static void Hold(string folder, params string[] patterns)
    {
        var found = patterns
            .SelectMany(pattern => Directory.GetFiles(folder, pattern, SearchOption.AllDirectories))
            .Where(file => Path.GetFileName(file) != "SHA256SUMS")
            .ToDictionary(
                file => Path.GetRelativePath(folder, file).Replace('\\', '/'),
                file => Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(file))));

        Assert.NotEmpty(found);
        Assert.Equal(Of(folder), found);
    }
}
