using CsCheck;

namespace InspectLog.Measuring.Tests;

public class ConformityPropertyTests
{
    private static readonly Gen<Limits> SomeLimits =
        Gen.Select(Gen.Double[-50, 50], Gen.Double[0.01, 50], Gen.Int[0, 2]).Select((lower, width, sides) => sides switch
        {
            0 => Limits.Of(lower, null),
            1 => Limits.Of(null, lower),
            _ => Limits.Of(lower, lower + width),
        });

    private static readonly Gen<DisplayedReading> SomeReading =
        Gen.Select(Gen.Double[-100, 100], Gen.Double[-1, 1].Array[0, 5], Gen.Double[0, 5], Gen.Double[0, 20], Gen.Double[1e-6, 1])
            .Select((value, more, percent, counts, step) => Some.Reading(
                [value, .. more.Select(offset => value + offset)], percent, counts, step));

    [Fact]
    public void Probability_lies_from_0_to_1() =>
        Gen.Select(SomeReading, SomeLimits).Sample((reading, limits) =>
            ConformityRule.Decide(reading, limits).ProbabilityOfConformity is >= 0 and <= 1);

    [Fact]
    public void Bracket_probability_lies_from_0_to_1() =>
        Gen.Select(Gen.Double[-60, 60], Gen.Double[1e-9, 20], SomeLimits).Sample((goes, width, limits) =>
            ConformityRule.Decide(new Bracket(goes, goes + width), limits).ProbabilityOfConformity is >= 0 and <= 1);

    [Fact]
    public void Wider_uncertainty_never_turns_an_inside_value_out_or_a_fail_into_a_pass() =>
        Gen.Select(Gen.Double[-100, 100], Gen.Double[1e-6, 10], Gen.Double[1, 10], SomeLimits)
            .Sample((value, u, wider, limits) =>
            {
                var narrow = ConformityRule.Decide(Some.With(value, u), limits).Decision;
                var wide = ConformityRule.Decide(Some.With(value, u * wider), limits).Decision;
                // It moves only towards the conditional decisions, and never across the limit itself. What lies as near to it as
                // numbers that count as equal (a millionth of a millionth of the guard band) is on it or not by how wide that is.
                return IsOnLimit(value, limits) || wide == narrow
                    || wide == (narrow <= Decision.ConditionalPass ? Decision.ConditionalPass : Decision.ConditionalFail);
            });

    [Theory]
    [InlineData(1e-8)]
    [InlineData(-1e-8)]
    public void What_is_farther_from_a_limit_than_numbers_that_count_as_equal_is_never_on_it(double beyond)
    {
        var limits = Limits.Of(null, 0);

        Assert.All([1e-6, 1, 100], u => Assert.Equal(beyond < 0, ConformityRule.Decide(Some.With(beyond, u), limits).Decision <= Decision.ConditionalPass));
    }

    // The widest guard band here is some 200, so this is hundreds of times what counts as equal.
    private static bool IsOnLimit(double value, Limits limits) => Math.Abs(value - (limits.Lower ?? limits.Upper!.Value)) < 1e-7 || Math.Abs(value - (limits.Upper ?? limits.Lower!.Value)) < 1e-7;

    [Fact]
    public void Allowance_never_turns_a_real_reading_from_fail_to_pass() =>
        Gen.Select(SomeReading, SomeLimits, Gen.Double[0, 50]).Sample((reading, limits, halfWidth) =>
        {
            var bare = ConformityRule.Decide(reading, limits);
            var allowed = ConformityRule.Decide(
                reading with { Allowances = [new(AllowanceSource.Method, halfWidth)] }, limits);
            return allowed.StandardUncertainty >= bare.StandardUncertainty
                && (IsOnLimit(bare.Value, limits) || (bare.Decision <= Decision.ConditionalPass) == (allowed.Decision <= Decision.ConditionalPass));
        });

    [Fact]
    public void Leads_move_the_value_and_never_shrink_its_uncertainty_below_that_of_nulled_leads() =>
        Gen.Select(SomeReading, Gen.Double[0, 10], Gen.Bool).Sample((reading, own, same) =>
        {
            var less = Estimate.Of(reading with { Leads = new([own], reading.Accuracy, reading.Resolution, same) });
            var nulled = Estimate.Of(reading with { Values = [.. reading.Values.Select(value => value - own)] });
            return Math.Abs(less.Value - nulled.Value) < 1e-9
                && (!same || less.StandardUncertainty >= nulled.StandardUncertainty * (1 - 1e-9));
        });

    [Fact]
    public void Decision_gets_no_better_as_the_value_moves_outward() =>
        Gen.Select(Gen.Double[-50, 50], Gen.Double[0, 50], Gen.Double[0, 20], Gen.Double[0.001, 10])
            .Sample((upper, inside, step, u) =>
            {
                var limits = Limits.Of(null, upper);
                var near = ConformityRule.Decide(Some.With(upper - inside, u), limits);
                var far = ConformityRule.Decide(Some.With(upper - inside + step, u), limits);
                return far.Decision >= near.Decision
                    && far.ProbabilityOfConformity <= near.ProbabilityOfConformity + 1e-12;
            });

    [Fact]
    public void Decision_of_a_real_meter_gets_no_better_as_the_value_moves_outward() =>
        Gen.Select(Gen.Double[0, 50], Gen.Double[0.1, 50], Gen.Double[0, 2], Gen.Double[0, 2], Gen.Double[0, 5], Gen.Bool)
            .Sample((lower, width, from, further, percent, up) =>
            {
                var limits = Limits.Of(lower, lower + width);
                var middle = lower + (width / 2);
                return Decided(from + further) >= Decided(from);

                Decision Decided(double outward) => ConformityRule.Decide(
                    Some.Reading([middle + ((up ? 1 : -1) * outward * width)], percent, 2, 0.01), limits).Decision;
            });

    [Fact]
    public void Mirror_image_is_decided_alike() =>
        Gen.Select(SomeReading, SomeLimits).Sample((reading, limits) =>
        {
            var mirrored = Limits.Of(-limits.Upper, -limits.Lower);
            var one = ConformityRule.Decide(reading, limits);
            var other = ConformityRule.Decide(
                reading with { Values = [.. reading.Values.Select(value => -value)] }, mirrored);
            return one.Decision == other.Decision
                && Math.Abs(one.ProbabilityOfConformity - other.ProbabilityOfConformity) < 1e-12;
        });

    [Fact]
    public void Pass_leaves_no_more_risk_at_one_limit_than_two_standard_uncertainties() =>
        Gen.Select(Gen.Double[-60, 60], Gen.Double[1e-3, 20], Gen.Double[-50, 50]).Sample((goes, width, upper) =>
        {
            var conformity = ConformityRule.Decide(new Bracket(goes, goes + width), Limits.Of(null, upper));
            return conformity.Decision == Decision.Pass == conformity.ProbabilityOfConformity >= 0.977249 - 1e-9
                || Math.Abs(conformity.ProbabilityOfConformity - NormalDistribution.Below(2)) < 1e-9;
        });
}
