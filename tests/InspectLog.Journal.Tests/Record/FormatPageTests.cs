using System.Text.Json;
using System.Text.RegularExpressions;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.Tests.Support;
using InspectLog.Measuring;

namespace InspectLog.Journal.Tests.Record;

/// <summary>What FORMAT.md lists is what the program writes.</summary>
public sealed partial class FormatPageTests
{
    private static string Page => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "FORMAT.md"));

    [Fact]
    public void Kinds_of_quantity_are_the_ones_an_instrument_is_written_with_and_their_units()
    {
        var list = KindsOfQuantity().Match(Page);

        Assert.Equal(
            Enum.GetValues<QuantityKind>().Select(kind => (WrittenFor(kind), Units.BaseOf(kind).Symbol)),
            Listed().Matches(list.Value).Select(one => (one.Groups[1].Value, one.Groups[2].Value)));
    }

    private static string WrittenFor(QuantityKind kind)
    {
        var body = BodyJson.Write(new InstrumentAdded(Some.Meter with { Kind = kind }));
        return JsonDocument.Parse(body).RootElement.GetProperty("instrument").GetProperty("kind").GetString()!;
    }

    [GeneratedRegex(@"The kinds of\s+quantity are [^.]*\.")]
    private static partial Regex KindsOfQuantity();

    [GeneratedRegex(@"`([a-z ]+)` \(([^),]+)")]
    private static partial Regex Listed();
}
