using System.Security.Cryptography;
using System.Text;
using InspectLog.Archives.BagIt;
using InspectLog.Archives.Tests.Support;

namespace InspectLog.Archives.Tests.BagIt;

/// <summary>A bag written file by file, to be spoilt.</summary>
internal sealed class SomeBag : IDisposable
{
    private readonly TempFolder _folder = new();
    private readonly SortedDictionary<string, byte[]> _payload = new(StringComparer.Ordinal);

    public SomeBag()
    {
        Declaration = "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n";
        Payload("data/test-file.txt", "This is a test file\n");
        Payload("data/deeper/another file.txt", "Another\n");
    }

    public string Path => _folder.Path;

    public string Declaration { set => Tag("bagit.txt", value); }

    public static string Sha256(byte[] bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    public static string Sha512(byte[] bytes) => Convert.ToHexStringLower(SHA512.HashData(bytes));

    /// <summary>Adds a payload file that the manifest will name.</summary>
    public SomeBag Payload(string path, string text)
    {
        _payload[path] = Encoding.UTF8.GetBytes(text);
        return Tag(path, text);
    }

    public SomeBag Tag(string path, string text) => Tag(path, Encoding.UTF8.GetBytes(text));

    public SomeBag Tag(string path, byte[] bytes)
    {
        _folder.Write(path, bytes);
        return this;
    }

    public SomeBag Remove(string path)
    {
        File.Delete(_folder.At(path.Split('/')));
        return this;
    }

    /// <summary>The usual manifest, changed.</summary>
    public SomeBag Manifest(Func<string, string>? change = null, string algorithm = "sha256", Func<byte[], string>? sum = null)
    {
        var text = string.Concat(_payload.Select(file => $"{(sum ?? Sha256)(file.Value)}  {BagPath.Encoded(file.Key)}\n"));
        return Tag($"manifest-{algorithm}.txt", change is null ? text : change(text));
    }

    public SomeBag TagManifest(params string[] names) => Tag(
        "tagmanifest-sha256.txt",
        string.Concat(names.Select(name => $"{Sha256(File.ReadAllBytes(_folder.At(name)))}  {name}\n")));

    public BagReading Read()
    {
        using var tree = FolderTree.Of(Path);
        return BagCheck.Read(tree);
    }

    public void Dispose() => _folder.Dispose();
}
