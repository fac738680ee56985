using System.Text;
using InspectLog.Archives.BagIt;
using InspectLog.Journal.Sealing;

namespace InspectLog.Archives.Checking;

/// <summary>Reads the seals an archive brings.</summary>
internal static class SealsReading
{
    private const string Folder = "seal/";
    private const string ManifestFile = "manifest-sha256.txt";
    private const string StampEnding = ".tst";

    public static ArchiveSeals Of(IFileTree tree, BagReading bag, ArchiveFacts facts)
    {
        // One whose JWS was taken away is not passed as one that was never sealed.
        var own = tree.Lengths.Keys.Any(IsOfOwn) ? Read(tree, SealBundle.Jws) : null;
        return new(
            own,
            [
                .. tree.Lengths.Keys
                    .Where(path => !IsOfOwn(path) && path.StartsWith(Folder, StringComparison.Ordinal) && path.EndsWith(SignedSeal.Ending, StringComparison.Ordinal))
                    .Order(StringComparer.Ordinal)
                    .Select(path => Read(tree, path)),
            ],
            JournalChain.Of(facts.Entries),
            bag.Sums.GetValueOrDefault(ManifestFile)?.Sha256 ?? "")
        {
            Strays = own?.Sound is { } signed ? [.. Strays(tree, signed)] : [],
        };
    }

    private static bool IsOfOwn(string path) =>
        path.StartsWith(Folder, StringComparison.Ordinal) && !path.StartsWith(SealBundle.Earlier + "/", StringComparison.Ordinal);

    private static KeptSeal Read(IFileTree tree, string path) => TreeReading.TryWhole(tree, path) is { } bytes
        ? KeptSeal.Of(path, Encoding.Latin1.GetString(bytes), TreeReading.TryWhole(tree, Path.ChangeExtension(path, StampEnding)))
        : new(path) { Problem = "it is missing or cannot be read" };

    /// <summary>The same seal lies there once more in pieces, for other tools; they must not be told another one.</summary>
    private static IEnumerable<string> Strays(IFileTree tree, SignedSeal own) => SealBundle.Of(own, [])
        .Where(piece => IsOfOwn(piece.Path) && TreeReading.TryWhole(tree, piece.Path)?.AsSpan().SequenceEqual(piece.Bytes.Span) != true)
        .Select(piece => piece.Path);
}
