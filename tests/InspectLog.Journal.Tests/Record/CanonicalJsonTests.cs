using System.Security.Cryptography;
using System.Text;
using InspectLog.Journal.Record;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests.Record;

public sealed class CanonicalJsonTests
{
    // The files of the reference implementation (cyberphone/json-canonicalization, testdata); "values" is the sample
    // of RFC 8785, 3.2.2, "weird" the one of 3.2.3. The hashes make sure that the files themselves are whole.
    [Theory]
    [InlineData("arrays", "099601b171cafed97c333f8878d68e7f8c8f795412adb34b2fdcf0e7c7beac42")]
    [InlineData("french", "d99d0ebdcb0033cb858cfa830ae46bc0fb3309413b271f1da828c89901a27ed5")]
    [InlineData("structures", "605f65004ec2db7692522a0852c22f1c989e036d547e88963d1a3143cf3195d5")]
    [InlineData("unicode", "0d99aad92a125196ff887876643fd3206786a84ddce2cee52ba4ad256d2381d3")]
    [InlineData("values", "2d5e01a318d0f0879ab568c4be289c8b1f64ef8921a53c6277d5e069978baacb")]
    [InlineData("weird", "6af595a9aa80110b964b4de3f82a05fa6ae7423005019bacfa2620dddc4e94d1")]
    public void Reference_file_gives_the_reference_bytes(string name, string sha256)
    {
        var canonical = CanonicalJson.Of(TestData.Bytes("jcs", "input", name + ".json"));

        Assert.Equal(TestData.Bytes("jcs", "output", name + ".json"), canonical);
        Assert.Equal(sha256, Convert.ToHexStringLower(SHA256.HashData(canonical)));
    }

    [Fact]
    public void Canonical_form_of_canonical_form_is_itself()
    {
        foreach (var file in Directory.GetFiles(TestData.PathOf("jcs", "output")))
        {
            var bytes = File.ReadAllBytes(file);
            Assert.Equal(bytes, CanonicalJson.Of(bytes));
        }
    }

    [Theory]
    [InlineData("""{"a":1,"a":2}""")] // RFC 7493, 2.3
    [InlineData("""{"a":1,"\u0061":2}""")]
    [InlineData("""["\ud800"]""")] // RFC 7493, 2.1
    [InlineData("""["\udc00\ud800"]""")]
    [InlineData("""{"\ud800":1}""")]
    [InlineData("[1e400]")] // RFC 7493, 2.2
    [InlineData("[NaN]")]
    [InlineData("[-Infinity]")]
    [InlineData("[1] [2]")]
    [InlineData("[1,]")]
    [InlineData("[01]")]
    [InlineData("{'a':1}")]
    [InlineData("[1] // one")]
    [InlineData("")]
    public void Text_that_is_not_IJSON_is_refused(string text) =>
        Assert.Throws<FormatException>(() => CanonicalJson.Of(Encoding.UTF8.GetBytes(text)));

    [Fact]
    public void Bytes_that_are_not_UTF8_are_refused() =>
        Assert.Throws<FormatException>(() => CanonicalJson.Of(new byte[] { (byte)'[', (byte)'"', 0xC3, 0x28, (byte)'"', (byte)']' }));

    [Fact]
    public void Nesting_without_end_is_refused() =>
        Assert.Throws<FormatException>(() => CanonicalJson.Of(Encoding.UTF8.GetBytes(new string('[', 100_000))));
}
