using System.Security.Cryptography;
using InspectLog.Archives.BagIt;

namespace InspectLog.Archives.Making;

/// <summary>Writes the files of a bag, hashes each as it goes by, and writes the manifests after them.</summary>
/// <param name="target">Where to.</param>
public sealed class BagWriter(IBagTarget target)
{
    private readonly SortedDictionary<string, string> _payload = new(StringComparer.Ordinal);
    private readonly SortedDictionary<string, string> _tags = new(StringComparer.Ordinal);
    private long _octets;

    /// <summary>How large the payload is so far.</summary>
    public PayloadOxum Oxum => new(_octets, _payload.Count);

    /// <summary>Adds a file to the payload.</summary>
    /// <param name="path">Its path below the folder <c>data</c>.</param>
    /// <param name="length">How many bytes it will have, as far as that is known.</param>
    /// <param name="write">Writes its bytes.</param>
    /// <returns>Its SHA-256, lower-case hex.</returns>
    public async Task<string> AddAsync(string path, long? length, Func<Stream, Task> write)
    {
        var (sha256, written) = await WriteAsync($"data/{path}", length, write).ConfigureAwait(false);
        _payload.Add($"data/{path}", sha256);
        _octets += written;
        return sha256;
    }

    /// <summary>Adds a tag file: one that is about the bag.</summary>
    /// <returns>Its SHA-256, lower-case hex.</returns>
    public async Task<string> AddTagAsync(string name, ReadOnlyMemory<byte> bytes)
    {
        var (sha256, _) = await WriteAsync(name, bytes.Length, to => to.WriteAsync(bytes).AsTask()).ConfigureAwait(false);
        _tags.Add(name, sha256);
        return sha256;
    }

    /// <summary>Writes the manifest of the payload, to which nothing can be added after it.</summary>
    /// <returns>Its SHA-256, lower-case hex.</returns>
    public Task<string> AddManifestAsync() => AddTagAsync("manifest-sha256.txt", BagManifest.Write(_payload));

    /// <summary>Writes the manifest of the tag files, after which nothing can be added.</summary>
    public async Task FinishAsync()
    {
        var tags = BagManifest.Write(_tags);
        await target.AddAsync("tagmanifest-sha256.txt", tags.Length, to => to.WriteAsync(tags).AsTask()).ConfigureAwait(false);
    }

    private async Task<(string Sha256, long Written)> WriteAsync(string path, long? length, Func<Stream, Task> write)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        var written = 0L;
        await target.AddAsync(path, length, async to =>
        {
            var hashing = new Hashing(to, hash);
            await using (hashing.ConfigureAwait(false))
            {
                await write(hashing).ConfigureAwait(false);
            }

            written = hashing.Written;
        }).ConfigureAwait(false);
        return length is { } said && said != written
            ? throw new IOException($"{path} has {written} bytes and should have {said}.")
            : (Convert.ToHexStringLower(hash.GetHashAndReset()), written);
    }

    private sealed class Hashing(Stream to, IncrementalHash hash) : WriteOnlyStream
    {
        public long Written { get; private set; }

        public override void Write(ReadOnlySpan<byte> buffer)
        {
            to.Write(buffer);
            hash.AppendData(buffer);
            Written += buffer.Length;
        }
    }
}
