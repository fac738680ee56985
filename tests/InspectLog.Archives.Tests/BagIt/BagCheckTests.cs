namespace InspectLog.Archives.Tests.BagIt;

/// <summary>Cases of RFC 8493, written from its text; the section stands in the name of each.</summary>
/// <remarks>Passed over, each with its reason: bags of versions before 1.0 (this program never wrote one, and says which version
/// it does not know); manifests of MD5, SHA-1, SHA-224 and SHA-384 alone (the RFC discourages the first two, and this program
/// writes SHA-256); tag files in other encodings than UTF-8 (likewise); holes filled by fetch.txt (nothing is ever fetched; a bag
/// with one is refused in words, though it may be valid); bags whose paths only some systems can tell apart (2.1.3 and 5.3 leave them to the
/// reader; they are refused, since an archive has to unpack everywhere).</remarks>
public sealed class BagCheckTests : IDisposable
{
    private readonly SomeBag _bag = new();

    public void Dispose() => _bag.Dispose();

    public static TheoryData<string, Action<object>> Valid => new()
    {
        { "2, a basic bag", bag => Of(bag).Manifest() },
        { "2, line ends of carriage return and line feed", bag => Of(bag).Manifest(text => text.Replace("\n", "\r\n")).Declaration = "BagIt-Version: 1.0\r\nTag-File-Character-Encoding: UTF-8\r\n" },
        { "2, line ends of carriage return alone", bag => Of(bag).Manifest(text => text.Replace('\n', '\r')) },
        { "2.1.3, checksums in capitals", bag => Of(bag).Manifest(text => string.Concat(text.Split('\n').SkipLast(1).Select(line => line[..64].ToUpperInvariant() + line[64..] + "\n"))) },
        { "2.1.3, a tab between checksum and path", bag => Of(bag).Manifest(text => text.Replace("  ", "\t")) },
        { "2.1.3, a path with spaces, letters of other scripts and a percent sign", bag => Of(bag).Payload("data/100% Ω.txt", "x").Manifest() },
        { "2.1.3, a path with a line feed and a carriage return, percent-encoded", bag => Of(bag).Payload("data/two\nlines\r.txt", "x").Manifest() },
        { "2.1.3, a name that looks percent-encoded and is not", bag => Of(bag).Payload("data/odd%0Aname.txt", "x").Manifest() },
        { "2.1.3, manifests of two algorithms", bag => Of(bag).Manifest().Manifest(null, "sha512", SomeBag.Sha512) },
        { "2.1.3, an empty payload file", bag => Of(bag).Payload("data/empty", "").Manifest() },
        { "2.2.1, a tag manifest", bag => Of(bag).Manifest().TagManifest("bagit.txt", "manifest-sha256.txt") },
        { "2.2.2, labels twice, values on several lines", bag => Of(bag).Manifest().Tag("bag-info.txt", "Contact-Name: One\nContact-Name: Other\nExternal-Description: first\n  second\n\tthird\nPayload-Oxum: 28.2\n") },
        { "2.2.4, further tag files that no manifest names", bag => Of(bag).Manifest().Tag("notes/any.txt", "x") },
    };

    public static TheoryData<string, Action<object>, string> Invalid => new()
    {
        { "2.1.1, no bagit.txt", bag => Of(bag).Manifest().Remove("bagit.txt"), "bagit.txt is missing" },
        { "2.1.1, an unknown version", bag => Of(bag).Manifest().Declaration = "BagIt-Version: 2.1\nTag-File-Character-Encoding: UTF-8\n", "version 2.1" },
        { "2.1.1, a byte order mark", bag => Of(bag).Manifest().Declaration = "\uFEFFBagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n", "byte order mark" },
        { "2.1.1, spaces before the colon", bag => Of(bag).Manifest().Declaration = "BagIt-Version : 1.0\nTag-File-Character-Encoding: UTF-8\n", "two lines" },
        { "2.1.1, a third line", bag => Of(bag).Manifest().Declaration = "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\nMore: x\n", "two lines" },
        { "2.1.1, the lines in the other order", bag => Of(bag).Manifest().Declaration = "Tag-File-Character-Encoding: UTF-8\nBagIt-Version: 1.0\n", "two lines" },
        { "2.1.1, another encoding", bag => Of(bag).Manifest().Declaration = "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-16\n", "not in UTF-8" },
        { "2.1.2, no payload folder", bag => Of(bag).Manifest(_ => "").Remove("data/test-file.txt").Remove("data/deeper/another file.txt"), "data is missing" },
        { "2.1.3, no manifest", bag => Of(bag), "manifest-sha256.txt is missing" },
        { "2.1.3, only a manifest of an algorithm not known here", bag => Of(bag).Manifest(null, "md5"), "manifest-sha256.txt is missing" },
        { "3, a payload file that the manifest does not name", bag => Of(bag).Manifest().Tag("data/extra.txt", "x"), "data/extra.txt does not belong here" },
        { "3, a payload file named in one manifest and not in the other", bag => Of(bag).Manifest().Manifest(text => text[..text.IndexOf('\n')] + "\n", "sha512", SomeBag.Sha512), "manifest-sha512.txt does not name it" },
        { "3, a missing payload file", bag => Of(bag).Manifest().Remove("data/test-file.txt"), "data/test-file.txt is missing" },
        { "3, a changed payload file", bag => Of(bag).Manifest().Tag("data/test-file.txt", "This is a test File\n"), "data/test-file.txt is not what it was" },
        { "3, a changed tag file", bag => Of(bag).Manifest().TagManifest("bagit.txt").Tag("bagit.txt", "BagIt-Version: 1.0\r\nTag-File-Character-Encoding: UTF-8\r\n"), "bagit.txt is not what it was" },
        { "3, a missing tag file", bag => Of(bag).Manifest().Tag("more.txt", "x").TagManifest("more.txt").Remove("more.txt"), "more.txt is missing" },
        { "2.1.3, a path out of the bag", bag => Of(bag).Manifest(text => text + $"{new string('0', 64)}  data/../../etc/passwd\n"), "leads out of the archive" },
        { "2.1.3, an absolute path", bag => Of(bag).Manifest(text => text + $"{new string('0', 64)}  /etc/passwd\n"), "absolute path" },
        { "6, a path into somebody's own folder", bag => Of(bag).Manifest(text => text + $"{new string('0', 64)}  ~/file\n"), "begins with ~" },
        { "6, a drive letter", bag => Of(bag).Manifest(text => text + $"{new string('0', 64)}  C:/file\n"), "colon" },
        { "2.1.3, a backslash", bag => Of(bag).Manifest(text => text + $"{new string('0', 64)}  data\\file\n"), "backslash" },
        { "2.1.3, a path outside of data", bag => Of(bag).Tag("other.txt", "x").Manifest(text => text + $"{SomeBag.Sha256("x"u8.ToArray())}  other.txt\n"), "does not lie in the folder data" },
        { "2.1.3, a path twice", bag => Of(bag).Manifest(text => text + text), "twice" },
        { "2.1.3, a short checksum", bag => Of(bag).Manifest(text => text[1..]), "no checksum with a path" },
        { "2.1.3, a checksum alone", bag => Of(bag).Manifest(text => text + new string('0', 64) + "\n"), "no checksum with a path" },
        { "2.1.3, a manifest with a byte order mark", bag => Of(bag).Manifest(text => "\uFEFF" + text), "manifest-sha256.txt is not plain UTF-8" },
        { "2.1.3, a manifest that is not UTF-8", bag => Of(bag).Manifest().Tag("manifest-sha256.txt", [0xFF, 0xFE, 0x41]), "manifest-sha256.txt is not plain UTF-8" },
        { "2.2.1, a tag manifest that names itself", bag => Of(bag).Manifest().Tag("tagmanifest-sha256.txt", $"{new string('0', 64)}  tagmanifest-sha256.txt\n"), "no tag file it may name" },
        { "2.2.1, a tag manifest that names a payload file", bag => Of(bag).Manifest().TagManifest("data/test-file.txt"), "no tag file it may name" },
        { "2.2.2, a line that is no label", bag => Of(bag).Manifest().Tag("bag-info.txt", "no label\n"), "bag-info.txt has a line" },
        { "2.2.2, a Payload-Oxum that is wrong", bag => Of(bag).Manifest().Tag("bag-info.txt", "Payload-Oxum: 28.3\n"), "28.3" },
        { "2.2.2, a Payload-Oxum that is none", bag => Of(bag).Manifest().Tag("bag-info.txt", "Payload-Oxum: lots\n"), "lots" },
        { "2.2.3, a list of what to fetch", bag => Of(bag).Manifest().Tag("fetch.txt", "https://example.org/x 1 data/test-file.txt\n"), "nothing is ever fetched" },
        { "5.3, names that differ in capitals alone", bag => Of(bag).Payload("data/TEST-file.txt", "x").Manifest(), "cannot be told from" },
        { "5.3, a name that some systems keep for a device", bag => Of(bag).Payload("data/aux.txt", "x").Manifest(), "keep for a device" },
        { "5.3, a point at the end of a name", bag => Of(bag).Payload("data/file.", "x").Manifest(), "point or space at the end" },
    };

    [Theory]
    [MemberData(nameof(Valid))]
    public void Bag_is_valid(string section, Action<object> make)
    {
        make(_bag);

        Assert.True(_bag.Read().Faults is [], $"{section}: {string.Join("; ", _bag.Read().Faults)}");
    }

    [Theory]
    [MemberData(nameof(Invalid))]
    public void Bag_is_not_valid_and_says_why(string section, Action<object> make, string why)
    {
        make(_bag);

        var faults = _bag.Read().Faults.Select(fault => $"{fault.Path} {fault.Words}").ToList();
        Assert.True(faults.Any(fault => fault.Contains(why, StringComparison.Ordinal)), $"{section}: {string.Join("; ", faults)}");
    }

    [Fact]
    public void Links_are_named_and_not_followed()
    {
        _bag.Manifest();
        File.CreateSymbolicLink(Path.Combine(_bag.Path, "data", "link"), "/etc/passwd");
        Directory.CreateSymbolicLink(Path.Combine(_bag.Path, "data", "folder"), "/etc");

        Assert.Equal(["data/folder", "data/link"], _bag.Read().Faults.Where(fault => fault.Words.Contains("is a link", StringComparison.Ordinal)).Select(fault => fault.Path));
    }

    private static SomeBag Of(object bag) => (SomeBag)bag;
}
