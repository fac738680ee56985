namespace InspectLog.Archives.BagIt;

/// <summary>Holds the manifests of a bag against its files. Pure.</summary>
internal static class ManifestCheck
{
    private const string Payload = "data/";

    /// <summary>What is wrong with the payload: each manifest of it names every file in the folder data, and no other.</summary>
    public static IEnumerable<BagFault> OfPayload(
        IReadOnlyList<NamedManifest> manifests, IFileTree tree, IReadOnlyDictionary<string, FileSums> sums)
    {
        if (manifests.Count == 0)
        {
            yield return new("manifest-sha256.txt", "is missing, so nothing says which files there should be");
        }

        if (!tree.Lengths.Keys.Any(IsPayload))
        {
            yield return new("data", "is missing or empty, so there is nothing in this bag");
        }

        foreach (var fault in manifests.SelectMany(manifest => OfPayload(manifest, tree, sums)))
        {
            yield return fault;
        }
    }

    /// <summary>What is wrong with the tag files that a manifest names.</summary>
    public static IEnumerable<BagFault> OfTags(NamedManifest manifest, IFileTree tree, IReadOnlyDictionary<string, FileSums> sums) =>
        Differences(manifest, tree, sums).Concat(manifest.Manifest.Files.Keys
            .Where(path => path.StartsWith("tagmanifest-", StringComparison.Ordinal) || IsPayload(path))
            .Select(path => new BagFault(manifest.Name, $"names {path}, which is no tag file it may name")));

    private static IEnumerable<BagFault> OfPayload(NamedManifest manifest, IFileTree tree, IReadOnlyDictionary<string, FileSums> sums) =>
        Differences(manifest, tree, sums)
            .Concat(manifest.Manifest.Files.Keys.Where(path => !IsPayload(path))
                .Select(path => new BagFault(manifest.Name, $"names {path}, which does not lie in the folder data")))
            .Concat(tree.Lengths.Keys
                .Where(path => IsPayload(path) && !manifest.Manifest.Files.ContainsKey(path))
                .Order(StringComparer.Ordinal)
                .Select(path => new BagFault(path, $"does not belong here: {manifest.Name} does not name it")));

    private static IEnumerable<BagFault> Differences(NamedManifest manifest, IFileTree tree, IReadOnlyDictionary<string, FileSums> sums)
    {
        var (name, algorithm, files) = (manifest.Name, manifest.Algorithm, manifest.Manifest.Files);
        foreach (var (path, checksum) in files.OrderBy(file => file.Key, StringComparer.Ordinal))
        {
            if (!tree.Lengths.ContainsKey(path))
            {
                yield return new(path, $"is missing: {name} names it");
            }
            else if (sums.TryGetValue(path, out var read) && (algorithm == "sha512" ? read.Sha512 : read.Sha256) != checksum)
            {
                yield return new(path, $"is not what it was: its {algorithm.ToUpperInvariant().Insert(3, "-")} is another than {name} says");
            }
        }
    }

    private static bool IsPayload(string path) => path.StartsWith(Payload, StringComparison.Ordinal);
}
