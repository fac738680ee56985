using CsCheck;
using InspectLog.Dictation.Understanding.Sounds;

namespace InspectLog.Dictation.Tests.Understanding.Sounds;

public sealed class SoundAlignmentTests
{
    private static readonly Gen<Phone[]> Runs = Gen.Enum<Phone>().Array[0, 12];

    [Fact]
    public void The_same_sounds_are_no_distance_apart() =>
        Runs.Where(run => run.Length > 0).Sample(run => Assert.Equal(0, SoundAlignment.Distance(run, run, 1)!.Value, 1e-12));

    [Fact]
    public void The_distance_is_the_same_both_ways() =>
        Gen.Select(Runs, Runs).Where((one, other) => one.Length + other.Length > 0).Sample((one, other) =>
            Assert.Equal(SoundAlignment.Distance(one, other, 2)!.Value, SoundAlignment.Distance(other, one, 2)!.Value, 1e-9));

    [Fact]
    public void A_bound_only_takes_away_what_lies_beyond_it() =>
        Gen.Select(Runs, Runs, Gen.Double[0, 1]).Where((one, other, _) => one.Length + other.Length > 0).Sample((one, other, most) =>
        {
            var free = SoundAlignment.Distance(one, other, 2)!.Value;
            var bounded = SoundAlignment.Distance(one, other, most);
            Assert.Equal(free <= most + 1e-9, bounded is not null);
        });

    [Theory]
    [InlineData("F R IY", "TH R IY", "S IH K S")]
    [InlineData("L IY", "L IY D", "F AY V")]
    [InlineData("B AH N T", "B ER N T", "K R AE K T")]
    public void Sounds_made_alike_are_nearer_than_others(string heard, string near, string far)
    {
        double To(string meant) => SoundAlignment.Distance(Phones.Parse(heard), Phones.Parse(meant), 2)!.Value;

        Assert.True(To(near) < To(far));
    }

    [Fact]
    public void No_sounds_at_all_have_no_distance() => Assert.Null(SoundAlignment.Distance([], [], 1));
}
