using System.Globalization;
using System.Runtime.InteropServices;
using System.Security.Cryptography;
using System.Text;
using InspectLog.Journal.Record;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests.Record;

public sealed class EcmaNumberTests
{
    // RFC 8785, appendix B.
    [Theory]
    [InlineData(0x0000000000000000, "0")]
    [InlineData(0x8000000000000000, "0")]
    [InlineData(0x0000000000000001, "5e-324")]
    [InlineData(0x8000000000000001, "-5e-324")]
    [InlineData(0x7fefffffffffffff, "1.7976931348623157e+308")]
    [InlineData(0xffefffffffffffff, "-1.7976931348623157e+308")]
    [InlineData(0x4340000000000000, "9007199254740992")]
    [InlineData(0xc340000000000000, "-9007199254740992")]
    [InlineData(0x4430000000000000, "295147905179352830000")]
    [InlineData(0x44b52d02c7e14af5, "9.999999999999997e+22")]
    [InlineData(0x44b52d02c7e14af6, "1e+23")]
    [InlineData(0x44b52d02c7e14af7, "1.0000000000000001e+23")]
    [InlineData(0x444b1ae4d6e2ef4e, "999999999999999700000")]
    [InlineData(0x444b1ae4d6e2ef4f, "999999999999999900000")]
    [InlineData(0x444b1ae4d6e2ef50, "1e+21")]
    [InlineData(0x3eb0c6f7a0b5ed8c, "9.999999999999997e-7")]
    [InlineData(0x3eb0c6f7a0b5ed8d, "0.000001")]
    [InlineData(0x41b3de4355555553, "333333333.3333332")]
    [InlineData(0x41b3de4355555554, "333333333.33333325")]
    [InlineData(0x41b3de4355555555, "333333333.3333333")]
    [InlineData(0x41b3de4355555556, "333333333.3333334")]
    [InlineData(0x41b3de4355555557, "333333333.33333343")]
    [InlineData(0xbecbf647612f3696, "-0.0000033333333333333333")]
    [InlineData(0x43143ff3c1cb0959, "1424953923781206.2")]
    public void Number_of_the_standards_table_is_spelled_as_there(ulong bits, string text) =>
        Assert.Equal(text, EcmaNumber.Format(BitConverter.UInt64BitsToDouble(bits)));

    [Theory]
    [InlineData(0x7fffffffffffffff)]
    [InlineData(0x7ff0000000000000)]
    [InlineData(0xfff0000000000000)]
    public void Number_that_is_not_finite_is_refused(ulong bits) =>
        Assert.Throws<FormatException>(() => EcmaNumber.Format(BitConverter.UInt64BitsToDouble(bits)));

    // The checksums published with the reference implementation (cyberphone/json-canonicalization,
    // testdata/README.md) for the numbers its algorithm gives.
    [Theory]
    [InlineData(1_000, "be18b62b6f69cdab33a7e0dae0d9cfa869fda80ddc712221570f9f40a5878687")]
    [InlineData(100_000, "22776e6d4b49fa294a0d0f349268e5c28808fe7e0cb2bcbe28f63894e494d4c7")]
    public void Published_sequence_of_numbers_has_its_published_checksum(int count, string sha256)
    {
        var lines = new StringBuilder();
        foreach (var bits in PublishedNumbers().Take(count))
        {
            var text = EcmaNumber.Format(BitConverter.UInt64BitsToDouble(bits));
            lines.Append(CultureInfo.InvariantCulture, $"{bits:x},{text}\n");
        }

        Assert.Equal(sha256, Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(lines.ToString()))));
    }

    /// <summary>Fixed edge cases, then 2000 numbers from the smallest normal one upwards, then whatever a chain of
    /// SHA-256 over 32 zero bytes gives, as little-endian words, zeros and what is not finite left out.</summary>
    private static IEnumerable<ulong> PublishedNumbers()
    {
        foreach (var line in File.ReadLines(TestData.PathOf("jcs", "edge-numbers.txt")))
        {
            yield return ulong.Parse(line, NumberStyles.HexNumber, CultureInfo.InvariantCulture);
        }

        for (var n = 0UL; n < 2000; n++)
        {
            yield return 0x0010000000000000 + n;
        }

        var block = new byte[32];
        while (true)
        {
            block = SHA256.HashData(block);
            foreach (var bits in MemoryMarshal.Cast<byte, ulong>(block).ToArray())
            {
                var number = BitConverter.UInt64BitsToDouble(bits);
                if (number != 0 && double.IsFinite(number))
                {
                    yield return bits;
                }
            }
        }
    }
}
