using InspectLog.Checks;
using InspectLog.Inspecting;
using InspectLog.Inspecting.Recording;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;

namespace InspectLog.App.Tests.Bench;

/// <summary>What repeats on record say of how far a new reading scatters (a pooled standard deviation: JCGM 100:2008,
/// 4.2.4).</summary>
public sealed class EarlierScatterTests
{
    private static readonly Instrument Meter = new("meter-1", "Bench meter", QuantityKind.Resistance, new(0.8, 3), 10);

    [Fact]
    public void Nothing_is_known_before_there_are_repeats()
    {
        Assert.Null(Scatter(Written.Scene(), Given([6000], 1)));
        Assert.Null(Scatter(Written.Scene(Decided([6000], 1), Decided([6100], 2)), Given([6000], 3)));
    }

    /// <summary>Two groups: deviations ±50 and ±10, 0 about their means; s² = (2·50² + 2·10²)/(1 + 2).</summary>
    [Fact]
    public void Repeats_of_all_places_are_pooled()
    {
        var scene = Written.Scene(Decided([6000, 6100], 1), Decided([7010, 7000, 6990], 2), Decided([8000], 3));

        var scatter = Scatter(scene, Given([9000], 4))!;

        Assert.Equal(3, scatter.DegreesOfFreedom);
        Assert.Equal(Math.Sqrt(5200 / 3.0), scatter.StandardDeviation, 1e-9);
        Assert.Equal(scatter, ((DisplayedReading)ReadingRecords.Decide(scene, Given([9000], 4)).Reading).Scatter);
    }

    [Fact]
    public void Reading_that_is_put_right_says_nothing_of_itself()
    {
        var scene = Written.Scene(Decided([6000, 6100], 1));
        var number = scene.Inspection.Readings[0].Sequence;

        Assert.NotNull(EarlierScatter.Of(scene.Vehicle, Given([6000, 6020], 1), null));
        Assert.Null(EarlierScatter.Of(scene.Vehicle, Given([6000, 6020], 1), number));
    }

    [Fact]
    public void Other_checks_and_other_instruments_say_nothing()
    {
        var scene = Written.Scene(Decided([6000, 6100], 1));

        Assert.Null(Scatter(scene, Given([6000], 1) with { Instrument = Meter with { Id = "meter-2" } }));
        Assert.Null(Scatter(scene, Given([6000], 1) with { Instrument = Meter with { Resolution = 1 } }));
        Assert.Null(Scatter(scene, Given([6000], 1) with { Check = Check("coil-secondary-resistance") }));
        Assert.Null(Scatter(scene, Given([], 1) with { Instrument = null, Bracket = new Bracket(1, 2) }));
    }

    [Fact]
    public void Old_record_of_a_huge_number_stands_in_nobodys_way()
    {
        var kept = (ReadingDecided)Decided([6000, 6100], 1);
        var huge = kept with { Reading = (DisplayedReading)kept.Reading with { Values = [1e300, -1e300] }, Conformity = null };
        var scene = Written.Scene(huge);

        Assert.Null(Scatter(scene, Given([6000], 2)));
        Assert.Equal(6000, ReadingRecords.Decide(scene, Given([6000], 2)).Conformity!.Value);
    }

    /// <summary>With what is known from before, two readings are no longer worth next to nothing.</summary>
    [Fact]
    public void Two_readings_with_earlier_ones_are_surer_than_two_alone()
    {
        var earlier = Enumerable.Range(1, 5).Select(place => Decided([6000, 6060], place)).ToArray();
        var alone = ReadingRecords.Decide(Written.Scene(), Given([7000, 7060], 6));
        var among = ReadingRecords.Decide(Written.Scene(earlier), Given([7000, 7060], 6));

        Assert.True(among.Conformity!.ExpandedUncertainty < alone.Conformity!.ExpandedUncertainty / 2);
    }

    private static KnownScatter? Scatter(BenchScene scene, GivenReading given) => EarlierScatter.Of(scene.Vehicle, given, null);

    private static EntryBody Decided(double[] values, int place) =>
        ReadingRecords.Decide(Written.Inspection, DecisionRule.NonBinary, Given(values, place));

    private static GivenReading Given(double[] values, int place) =>
        new(Check("lead-resistance"), place, values, null, "typed", Meter, []);

    private static Check Check(string id) => BuiltInSheets.All[0].Find(id)!;
}
