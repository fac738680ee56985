using InspectLog.Checks.Judging;

namespace InspectLog.Checks.Tests.Judging;

public class ObservationJudgeTests
{
    private static CheckSheet Sheet => BuiltInSheets.Find(BuiltInSheets.IgnitionBreakerless6)!;

    [Theory]
    [InlineData("rotor-blade", "good", false, Judgement.Good)]
    [InlineData("rotor-blade", "good", true, Judgement.Bad)]
    [InlineData("rotor-blade", "worn", false, Judgement.Attention)]
    [InlineData("rotor-blade", "worn", true, Judgement.Good)]
    [InlineData("rotor-blade", "burnt", false, Judgement.Bad)]
    [InlineData("rotor-blade", "burnt", true, Judgement.Good)]
    [InlineData("engine-restart", "started", true, Judgement.Bad)]
    public void One_observation_means_what_the_sheet_says(
        string check, string condition, bool negated, Judgement expected) =>
        Assert.Equal(expected, Once(check, new Observed(null, condition, negated)));

    [Fact]
    public void Nothing_said_is_unsaid() => Assert.Equal(Judgement.Unsaid, Once("rotor-blade"));

    [Fact]
    public void Something_done_but_nothing_seen_is_unsaid() =>
        Assert.Equal(Judgement.Unsaid, Once("rotor-blade", new Done(null, "replaced")));

    [Fact]
    public void Different_conditions_stand_together_and_the_worst_counts() =>
        Assert.Equal(
            Judgement.Bad,
            Once("rotor-blade",
                new Observed(null, "cracked"), new Observed(null, "worn"), new Observed(null, "clean")));

    [Fact]
    public void Later_word_on_the_same_condition_replaces_the_earlier() =>
        Assert.Equal(
            Judgement.Good,
            Once("engine-restart", new Observed(null, "started", Negated: true), new Observed(null, "started")));

    [Theory]
    [InlineData("replaced")]
    [InlineData("cleaned")]
    [InlineData("adjusted")]
    [InlineData("reconnected")]
    public void What_is_seen_after_something_was_done_counts_alone(string action) =>
        Assert.Equal(
            Judgement.Good,
            Once("rotor-top", new Observed(null, "corroded"), new Done(null, action), new Observed(null, "clean")));

    [Fact]
    public void What_was_found_stands_until_it_is_seen_again() =>
        Assert.Equal(Judgement.Attention, Once("rotor-top", new Observed(null, "corroded"), new Done(null, "cleaned")));

    [Fact]
    public void What_stands_is_known_by_its_position()
    {
        Observed[] seen = [new(null, "cracked"), new(null, "worn"), new(null, "cracked", Negated: true)];

        Assert.Equal([1, 2], ObservationJudge.Standing(seen));
        Assert.Equal([1, 2], ObservationJudge.Standing([.. seen, new Done(null, "replaced")]));
        Assert.Equal([4], ObservationJudge.Standing([.. seen, new Done(null, "replaced"), new Observed(null, "good")]));
        Assert.Empty(ObservationJudge.Standing([new Done(null, "replaced")]));
    }

    [Fact]
    public void Taking_a_part_off_undoes_nothing() =>
        Assert.Equal(
            Judgement.Bad,
            Once("rotor-top",
                new Observed(null, "cracked"), new Done(null, "disconnected"), new Observed(null, "clean")));

    [Fact]
    public void Each_place_is_judged_for_itself() =>
        Assert.Equal(
            [Judgement.Good, Judgement.Bad, Judgement.Attention, Judgement.Unsaid, Judgement.Good, Judgement.Unsaid],
            Places("spark", new Observed(1, "present"), new Observed(2, "present", Negated: true),
                new Observed(3, "present"), new Observed(3, "weak"), new Observed(5, "weak", Negated: true)));

    [Fact]
    public void Statement_about_the_whole_counts_for_every_place() =>
        Assert.Equal(
            [Judgement.Good, Judgement.Good, Judgement.Bad, Judgement.Good, Judgement.Bad, Judgement.Good],
            Places("lead-routing",
                new Observed(3, "swapped"), new Observed(5, "swapped"), new Observed(null, "correct")));

    [Fact]
    public void New_cap_is_new_at_every_tower() =>
        Assert.Equal(
            Enumerable.Repeat(Judgement.Good, 6),
            Places("cap-contacts", new Observed(2, "burnt"), new Observed(4, "corroded"), new Done(null, "replaced"),
                new Observed(null, "clean")));

    [Fact]
    public void Unknown_condition_is_refused_with_the_known_ones() =>
        Assert.Contains(
            "knows no condition 'rusty'. It knows: good, clean",
            Assert.Throws<ArgumentException>(() => Once("rotor-blade", new Observed(null, "rusty"))).Message,
            StringComparison.Ordinal);

    [Theory]
    [InlineData("spark", 7, "places 1 to 6, not 7")]
    [InlineData("spark", 0, "places 1 to 6, not 0")]
    [InlineData("rotor-blade", 1, "done once")]
    public void Place_there_is_not_is_refused(string check, int place, string says) =>
        Assert.Contains(
            says,
            Assert.Throws<ArgumentException>(
                () => ObservationJudge.JudgePlaces(Sheet.Find(check)!, 6, [new Done(place, "cleaned")])).Message,
            StringComparison.Ordinal);

    private static Judgement Once(string check, params Statement[] statements) =>
        Assert.Single(ObservationJudge.JudgePlaces(Sheet.Find(check)!, 6, statements)).Judgement;

    private static IEnumerable<Judgement> Places(string check, params Statement[] statements)
    {
        var places = ObservationJudge.JudgePlaces(Sheet.Find(check)!, 6, statements);
        Assert.Equal([1, 2, 3, 4, 5, 6], places.Select(place => place.Cylinder));
        return places.Select(place => place.Judgement);
    }
}
