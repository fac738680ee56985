namespace InspectLog.Archives.BagIt;

/// <summary>Checks a bag as RFC 8493 says (3, complete and valid). Of checksums it knows SHA-256 and SHA-512, of versions 1.0;
/// nothing is ever fetched.</summary>
public sealed class BagCheck
{
    private const string Payload = "data/";
    private const int LargestTagFile = 64 * 1024 * 1024;

    private readonly IFileTree _tree;
    private readonly CancellationToken _stop;
    private readonly List<BagFault> _faults;
    private readonly Dictionary<string, FileSums> _sums = new(StringComparer.Ordinal);

    private BagCheck(IFileTree tree, CancellationToken stop)
    {
        (_tree, _stop) = (tree, stop);
        _faults = [.. tree.Faults];
    }

    private static IReadOnlyList<(string Name, int Digits)> Algorithms { get; } = [("sha256", 64), ("sha512", 128)];

    /// <summary>Reads a bag through.</summary>
    /// <param name="tree">Its files.</param>
    /// <param name="read">Is told how many bytes have been read.</param>
    /// <param name="stop">Gives it up.</param>
    /// <exception cref="IOException">A file cannot be read.</exception>
    public static BagReading Read(IFileTree tree, IProgress<long>? read = null, CancellationToken stop = default) =>
        new BagCheck(tree, stop).Read(read);

    private BagReading Read(IProgress<long>? read)
    {
        CheckDeclaration();
        var payload = Manifests("manifest-");
        var tags = Manifests("tagmanifest-");
        Sum(payload.Concat(tags).Any(one => one.Algorithm == "sha512"), read);
        CheckPayload(payload);
        foreach (var (name, algorithm, manifest) in tags)
        {
            CheckTags(name, algorithm, manifest);
        }

        var info = Info();
        CheckOxum(info);
        CheckFetch();
        return new(_faults, _sums, info);
    }

    private void CheckDeclaration()
    {
        if (Bytes(BagDeclaration.FileName) is not { } bytes)
        {
            _faults.Add(new(BagDeclaration.FileName, "is missing, so this is no bag"));
        }
        else if (BagDeclaration.Fault(bytes) is { } fault)
        {
            _faults.Add(fault);
        }
    }

    private List<(string Name, string Algorithm, BagManifest Manifest)> Manifests(string prefix)
    {
        var found = new List<(string, string, BagManifest)>();
        foreach (var (algorithm, digits) in Algorithms)
        {
            var name = $"{prefix}{algorithm}.txt";
            if (Text(name) is { } text)
            {
                var manifest = BagManifest.Read(name, text, digits);
                _faults.AddRange(manifest.Faults);
                found.Add((name, algorithm, manifest));
            }
        }

        return found;
    }

    private void Sum(bool withSha512, IProgress<long>? progress)
    {
        var done = 0L;
        foreach (var path in _tree.Lengths.Keys.Order(StringComparer.Ordinal))
        {
            try
            {
                using var file = _tree.Open(path);
                _sums[path] = Summing.Of(file, withSha512, _stop);
            }
            catch (Exception damage) when (damage is InvalidDataException or EndOfStreamException)
            {
                _faults.Add(new(path, "cannot be read out of its container: what is there is not what was packed"));
            }

            progress?.Report(done += _tree.Lengths[path]);
        }
    }

    private void CheckPayload(List<(string Name, string Algorithm, BagManifest Manifest)> manifests)
    {
        if (manifests.Count == 0)
        {
            _faults.Add(new("manifest-sha256.txt", "is missing, so nothing says which files there should be"));
        }

        if (!_tree.Lengths.Keys.Any(path => path.StartsWith(Payload, StringComparison.Ordinal)))
        {
            _faults.Add(new("data", "is missing or empty, so there is nothing in this bag"));
        }

        foreach (var (name, algorithm, manifest) in manifests)
        {
            Compare(name, algorithm, manifest);
            _faults.AddRange(manifest.Files.Keys.Where(path => !path.StartsWith(Payload, StringComparison.Ordinal))
                .Select(path => new BagFault(name, $"names {path}, which does not lie in the folder data")));
            _faults.AddRange(_tree.Lengths.Keys
                .Where(path => path.StartsWith(Payload, StringComparison.Ordinal) && !manifest.Files.ContainsKey(path))
                .Order(StringComparer.Ordinal)
                .Select(path => new BagFault(path, $"does not belong here: {name} does not name it")));
        }
    }

    private void CheckTags(string name, string algorithm, BagManifest manifest)
    {
        Compare(name, algorithm, manifest);
        _faults.AddRange(manifest.Files.Keys
            .Where(path => path.StartsWith("tagmanifest-", StringComparison.Ordinal) || path.StartsWith(Payload, StringComparison.Ordinal))
            .Select(path => new BagFault(name, $"names {path}, which is no tag file it may name")));
    }

    private void Compare(string name, string algorithm, BagManifest manifest)
    {
        foreach (var (path, checksum) in manifest.Files.OrderBy(file => file.Key, StringComparer.Ordinal))
        {
            if (!_tree.Lengths.ContainsKey(path))
            {
                _faults.Add(new(path, $"is missing: {name} names it"));
            }
            else if (_sums.TryGetValue(path, out var sums) && (algorithm == "sha512" ? sums.Sha512 : sums.Sha256) != checksum)
            {
                _faults.Add(new(path, $"is not what it was: its {algorithm.ToUpperInvariant().Insert(3, "-")} is another than {name} says"));
            }
        }
    }

    private BagInfo? Info()
    {
        if (Text(BagInfo.FileName) is not { } text)
        {
            return null;
        }

        var info = BagInfo.Read(text);
        if (info is null)
        {
            _faults.Add(new(BagInfo.FileName, "has a line that is no label with a value"));
        }

        return info;
    }

    private void CheckOxum(BagInfo? info)
    {
        if (info?[PayloadOxum.Label] is not { } said)
        {
            return;
        }

        var payload = _tree.Lengths.Where(file => file.Key.StartsWith(Payload, StringComparison.Ordinal)).ToList();
        var found = new PayloadOxum(payload.Sum(file => file.Value), payload.Count);
        if (PayloadOxum.Read(said) is not { } oxum || oxum != found)
        {
            _faults.Add(new(BagInfo.FileName, $"says a payload of {said[..Math.Min(said.Length, 40)]} (bytes and files), and there is one of {found}"));
        }
    }

    /// <summary>A list of what to fetch is refused even where all of it is there: it names addresses somebody might follow.</summary>
    private void CheckFetch()
    {
        if (_tree.Lengths.ContainsKey("fetch.txt"))
        {
            _faults.Add(new("fetch.txt", "asks for files from elsewhere, and nothing is ever fetched here. Ask whoever sent this for the whole of it"));
        }
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
            _faults.Add(new(name, "is not plain UTF-8 without a byte order mark"));
        }

        return text;
    }

    private byte[]? Bytes(string name)
    {
        if (!_tree.Lengths.TryGetValue(name, out var length))
        {
            return null;
        }

        if (length > LargestTagFile)
        {
            _faults.Add(new(name, "is larger than any file of its sort"));
            return null;
        }

        try
        {
            using var file = _tree.Open(name);
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
