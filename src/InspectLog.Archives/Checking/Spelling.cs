using InspectLog.Archives.BagIt;

namespace InspectLog.Archives.Checking;

/// <summary>The files that no manifest covers have one spelling in an archive of InspectLog, so that a changed byte of them is
/// found as well. Other bags may spell them otherwise.</summary>
internal static class Spelling
{
    private const string Manifest = "manifest-sha256.txt";
    private const string TagManifest = "tagmanifest-sha256.txt";

    public static IEnumerable<BagFault> Faults(IFileTree tree, BagReading bag)
    {
        if (!tree.Lengths.ContainsKey(TagManifest))
        {
            yield return new(TagManifest, "is missing, so nothing says whether the manifest is what it was");
            yield break;
        }

        var tags = bag.Sums.Where(file => !file.Key.StartsWith("data/", StringComparison.Ordinal) && file.Key != TagManifest);
        var payload = bag.Sums.Where(file => file.Key.StartsWith("data/", StringComparison.Ordinal));
        foreach (var (name, files) in new[] { (Manifest, payload), (TagManifest, tags) })
        {
            var spelled = BagManifest.Write(files.Select(file => KeyValuePair.Create(file.Key, file.Value.Sha256)));
            if (TreeReading.TryWhole(tree, name) is { } there && !there.AsSpan().SequenceEqual(spelled))
            {
                yield return new(name, "is not spelled the way InspectLog writes it, or does not name the files that are there");
            }
        }

        if (TreeReading.TryWhole(tree, BagDeclaration.FileName) is { } declaration && !declaration.AsSpan().SequenceEqual(BagDeclaration.Bytes))
        {
            yield return new(BagDeclaration.FileName, "is not spelled the way InspectLog writes it");
        }
    }
}
