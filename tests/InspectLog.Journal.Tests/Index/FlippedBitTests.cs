using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests.Index;

/// <summary>Bits of the index that flip while the program is stopped never reach anybody.</summary>
[Trait("Takes", "long")]
public sealed class FlippedBitTests : IDisposable
{
    private const int Trials = 200;

    private readonly TempFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Flipped_bits_in_the_index_change_no_list_and_no_hit()
    {
        string before;
        using (var garage = FilledGarage.In(_folder))
        {
            before = FilledGarage.Everything(garage);
        }

        var (index, sum) = (File.ReadAllBytes(_folder.At("index.db")), File.ReadAllBytes(_folder.At("index.sha256")));
        var random = new Random(20261201);
        for (var trial = 0; trial < Trials; trial++)
        {
            var spoilt = index.ToArray();
            for (var flip = 0; flip <= trial % 4; flip++)
            {
                spoilt[random.Next(spoilt.Length)] ^= (byte)(1 << random.Next(8));
            }

            File.WriteAllBytes(_folder.At("index.db"), spoilt);
            File.WriteAllBytes(_folder.At("index.sha256"), sum);

            using var again = Garage.Open(_folder.Path, Some.Clock());

            Assert.Empty(again.Problems);
            Assert.Equal(before, FilledGarage.Everything(again));
        }
    }
}
