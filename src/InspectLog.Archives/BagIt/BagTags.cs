namespace InspectLog.Archives.BagIt;

/// <summary>Reads the tag files of a bag: what it declares, what its manifests name, what it says of itself. What is wrong with
/// them is added to its faults.</summary>
internal sealed class BagTags(IFileTree tree, List<BagFault> faults)
{
    private const int LargestTagFile = 64 * 1024 * 1024;

    private static IReadOnlyList<(string Name, int Digits)> Algorithms { get; } = [("sha256", 64), ("sha512", 128)];

    /// <summary>Looks whether this is a bag at all.</summary>
    public void CheckDeclaration()
    {
        if (Bytes(BagDeclaration.FileName) is not { } bytes)
        {
            faults.Add(new(BagDeclaration.FileName, "is missing, so this is no bag"));
        }
        else if (BagDeclaration.Fault(bytes) is { } fault)
        {
            faults.Add(fault);
        }
    }

    /// <summary>The manifests whose names begin so.</summary>
    public List<NamedManifest> Manifests(string prefix)
    {
        var found = new List<NamedManifest>();
        foreach (var (algorithm, digits) in Algorithms)
        {
            var name = $"{prefix}{algorithm}.txt";
            if (Text(name) is { } text)
            {
                var manifest = BagManifest.Read(name, text, digits);
                faults.AddRange(manifest.Faults);
                found.Add(new(name, algorithm, manifest));
            }
        }

        return found;
    }

    /// <summary>What the bag says of itself; null where it says nothing that can be read.</summary>
    public BagInfo? Info()
    {
        if (Text(BagInfo.FileName) is not { } text)
        {
            return null;
        }

        var info = BagInfo.Read(text);
        if (info is null)
        {
            faults.Add(new(BagInfo.FileName, "has a line that is no label with a value"));
        }

        return info;
    }

    private string? Text(string name)
    {
        if (Bytes(name) is not { } bytes)
        {
            return null;
        }

        var text = TagText.Read(bytes);
        if (text is null)
        {
            faults.Add(new(name, "is not plain UTF-8 without a byte order mark"));
        }

        return text;
    }

    private byte[]? Bytes(string name)
    {
        if (!tree.Lengths.TryGetValue(name, out var length))
        {
            return null;
        }

        if (length > LargestTagFile)
        {
            faults.Add(new(name, "is larger than any file of its sort"));
            return null;
        }

        try
        {
            using var file = tree.Open(name);
            using var bytes = new MemoryStream();
            file.CopyTo(bytes);
            return bytes.ToArray();
        }
        catch (Exception damage) when (damage is InvalidDataException or EndOfStreamException)
        {
            return null; // told when all files are read
        }
    }
}

/// <summary>A manifest of a bag.</summary>
/// <param name="Name">Its file.</param>
/// <param name="Algorithm">Of which checksums it is.</param>
/// <param name="Manifest">What it names.</param>
internal sealed record NamedManifest(string Name, string Algorithm, BagManifest Manifest);
