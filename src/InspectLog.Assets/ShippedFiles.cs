using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;

namespace InspectLog.Assets;

/// <summary>The files browsers load, each named after what is in it, so that a browser may keep it for good, and each
/// compressed ahead as well as a compressor can: nobody waits for that but the build.</summary>
internal sealed class ShippedFiles
{
    /// <summary>Enough of the SHA-256, in hexadecimal digits, for no two versions of a file to share a name.</summary>
    private const int HashDigits = 12;

    private readonly string _folder;
    private readonly SortedDictionary<string, string> _names = new(StringComparer.Ordinal);

    /// <param name="folder">Where to put them; emptied first.</param>
    public ShippedFiles(string folder)
    {
        _folder = folder;
        if (Directory.Exists(folder))
        {
            Directory.Delete(folder, recursive: true);
        }

        Directory.CreateDirectory(folder);
    }

    public void AddText(string name, string text) => Add(name, Encoding.UTF8.GetBytes(text));

    public void Add(string name, byte[] content)
    {
        var hash = Convert.ToHexStringLower(SHA256.HashData(content))[..HashDigits];
        var named = $"{Path.GetFileNameWithoutExtension(name)}-{hash}{Path.GetExtension(name)}";
        _names.Add(name, named);
        var path = Path.Combine(_folder, named);
        File.WriteAllBytes(path, content);
        Write(path + ".br", content, to => new BrotliStream(to, CompressionLevel.SmallestSize));
        Write(path + ".gz", content, to => new GZipStream(to, CompressionLevel.SmallestSize));
    }

    /// <summary>Writes which file is which.</summary>
    public void WriteList() => File.WriteAllText(Path.Combine(_folder, "assets.json"), JsonSerializer.Serialize(_names));

    private static void Write(string path, byte[] content, Func<Stream, Stream> compressor)
    {
        using var file = File.Create(path);
        using var compressed = compressor(file);
        compressed.Write(content);
    }
}
