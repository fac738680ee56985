using System.Text;

namespace InspectLog.Journal.Sealing;

/// <summary>A file to be laid into an archive.</summary>
/// <param name="Path">Its path below the archive's folder, with slashes.</param>
/// <param name="Bytes">What is in it.</param>
public sealed record BundledFile(string Path, ReadOnlyMemory<byte> Bytes);

/// <summary>The seal of an archive as files: the JWS, the same in pieces that openssl reads, the seals of before, and a script
/// that checks all with what most computers have. They are tag files: the manifest does not name them, since the seal is of
/// it.</summary>
public static class SealBundle
{
    /// <summary>The seal.</summary>
    public const string Jws = "seal/seal.jws";

    /// <summary>The folder of the seals that were there before.</summary>
    public const string Earlier = "seal/earlier";

    /// <summary>The script.</summary>
    public const string Script = "verify.sh";

    /// <summary>The files.</summary>
    /// <param name="seal">The seal of the archive.</param>
    /// <param name="earlier">The seals the vehicle has; those that cannot be read are left out.</param>
    public static IReadOnlyList<BundledFile> Of(SignedSeal seal, IEnumerable<KeptSeal> earlier) =>
    [
        new(Jws, Encoding.ASCII.GetBytes(seal.Compact)),
        new("seal/payload.json", seal.Payload),
        new("seal/signed.txt", seal.SignedBytes),
        new("seal/signature.der", seal.DerSignature),
        new("seal/key.pem", Encoding.ASCII.GetBytes(seal.Key.Pem + "\n")),
        .. OfUnsealed(earlier),
    ];

    /// <summary>The files of an archive that was not sealed itself: the seals of before, and the script.</summary>
    /// <param name="earlier">The seals the vehicle has; those that cannot be read are left out.</param>
    public static IReadOnlyList<BundledFile> OfUnsealed(IEnumerable<KeptSeal> earlier) =>
        [new(Script, Encoding.ASCII.GetBytes(CheckScript.Text)), .. earlier.SelectMany(Files)];

    /// <summary>What is wrong with the seal of an archive, each in a sentence; none where all it stands for is there. Pure.
    /// </summary>
    /// <param name="seal">The seal of the archive.</param>
    /// <param name="earlier">The seals of before.</param>
    /// <param name="chain">The journal in the archive.</param>
    /// <param name="manifest">SHA-256 of the archive's <c>manifest-sha256.txt</c>, lower-case hex.</param>
    /// <param name="key">The fingerprint of the key that is trusted, or its beginning; null where none was given.</param>
    public static IReadOnlyList<string> Faults(
        KeptSeal seal, IEnumerable<KeptSeal> earlier, JournalChain chain, string manifest, string? key)
    {
        var isOfManifest = seal.Sound is null || seal.Sound.Seal.Manifest == manifest;
        var report = SealsReport.Of([.. earlier, seal], chain, vehicleId: null);
        var isOfAnotherKey = key is not null && report.Newest(key) is not null && seal.Sound is { } signed && !KeyFingerprint.Is(signed.Key, key);
        return
        [
            .. SealWords.Faults(report, key),
            .. isOfAnotherKey
                ? [$"An earlier seal here was made with the key you gave, and this archive was sealed with another: {KeyFingerprint.Printed(seal.Sound!.Key)}. What came after that seal is only as good as this key."]
                : Array.Empty<string>(),
            .. isOfManifest
                ? Array.Empty<string>()
                : ["The manifest of this archive is not the one that was sealed: files were added, changed or taken away, and the manifest was made anew to match."],
        ];
    }

    private static IEnumerable<BundledFile> Files(KeptSeal kept)
    {
        if (kept.Sound is { } signed)
        {
            yield return new($"{Earlier}/{signed.FileName}", Encoding.ASCII.GetBytes(signed.Compact));
            if (kept.Stamp is { } stamp)
            {
                yield return new($"{Earlier}/{System.IO.Path.ChangeExtension(signed.FileName, ".tst")}", stamp.Token);
            }
        }
    }
}
