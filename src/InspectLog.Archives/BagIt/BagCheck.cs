namespace InspectLog.Archives.BagIt;

/// <summary>Checks a bag as RFC 8493 says (3, complete and valid). Of checksums it knows SHA-256 and SHA-512, of versions 1.0;
/// nothing is ever fetched.</summary>
public sealed class BagCheck
{
    private const string Payload = "data/";

    private readonly IFileTree _tree;
    private readonly CancellationToken _stop;
    private readonly List<BagFault> _faults;
    private readonly BagTags _tags;
    private readonly Dictionary<string, FileSums> _sums = new(StringComparer.Ordinal);

    private BagCheck(IFileTree tree, CancellationToken stop)
    {
        (_tree, _stop) = (tree, stop);
        _faults = [.. tree.Faults];
        _tags = new(tree, _faults);
    }

    /// <summary>Reads a bag through.</summary>
    /// <param name="tree">Its files.</param>
    /// <param name="read">Is told how many bytes have been read.</param>
    /// <param name="stop">Gives it up.</param>
    /// <exception cref="IOException">A file cannot be read.</exception>
    public static BagReading Read(IFileTree tree, IProgress<long>? read = null, CancellationToken stop = default) =>
        new BagCheck(tree, stop).Read(read);

    private BagReading Read(IProgress<long>? read)
    {
        _tags.CheckDeclaration();
        var payload = _tags.Manifests("manifest-");
        var tags = _tags.Manifests("tagmanifest-");
        Sum(payload.Concat(tags).Any(one => one.Algorithm == "sha512"), read);
        _faults.AddRange(ManifestCheck.OfPayload(payload, _tree, _sums));
        _faults.AddRange(tags.SelectMany(manifest => ManifestCheck.OfTags(manifest, _tree, _sums)));
        var info = _tags.Info();
        CheckOxum(info);
        CheckFetch();
        return new(_faults, _sums, info);
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
}
