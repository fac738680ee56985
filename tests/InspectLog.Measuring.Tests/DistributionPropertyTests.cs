using CsCheck;

namespace InspectLog.Measuring.Tests;

/// <summary>What must hold of every budget, whatever is in it.</summary>
public class DistributionPropertyTests
{
    private const int Budgets = 100_000;

    // Of the uncertainty: the search for it ends at a hundred thousand-millionth, the sum over t at a thousand-millionth.
    private const double Slack = 1e-7;

    private static readonly Gen<Contribution> SomePart =
        Gen.Select(Gen.Int[0, 3], Gen.Double[-4, 1], Gen.Int[1, 12]).Select((shape, size, degrees) => new Contribution(
            "part",
            Math.Pow(10, size),
            shape == (int)ContributionShape.Student ? degrees : double.PositiveInfinity)
        {
            Shape = (ContributionShape)shape,
        });

    private static double Expanded(Contribution[] parts, double coverage) =>
        MeasurandDistribution.Of(parts).HalfWidthOf(coverage);

    [Fact]
    [Trait("Takes", "long")]
    public void Expanded_uncertainty_never_falls_when_a_contribution_grows() =>
        Gen.Select(SomePart.Array[1, 6], Gen.Double[1, 20], Gen.Int[0, 5], Gen.Double[0.5, 0.995]).Sample(
            (parts, times, which, coverage) =>
            {
                Contribution[] grown = [.. parts];
                var one = which % parts.Length;
                grown[one] = parts[one] with { StandardUncertainty = parts[one].StandardUncertainty * times };
                return Expanded(grown, coverage) >= Expanded(parts, coverage) * (1 - Slack);
            },
            iter: Budgets);

    [Fact]
    [Trait("Takes", "long")]
    public void Expanded_uncertainty_never_falls_when_a_contribution_is_added() =>
        Gen.Select(SomePart.Array[1, 5], SomePart, Gen.Double[0.5, 0.995]).Sample(
            (parts, further, coverage) => Expanded([.. parts, further], coverage) >= Expanded(parts, coverage) * (1 - Slack),
            iter: Budgets / 5);

    [Fact]
    public void Half_width_is_where_the_tails_hold_the_rest() =>
        Gen.Select(SomePart.Array[1, 6], Gen.Double[0.5, 0.995]).Sample((parts, coverage) =>
        {
            var distribution = MeasurandDistribution.Of(parts);
            return Math.Abs((2 * distribution.Above(distribution.HalfWidthOf(coverage))) - (1 - coverage)) < 1e-9;
        });

    [Fact]
    public void Probabilities_of_both_sides_and_the_middle_make_one() =>
        Gen.Select(SomePart.Array[1, 6], Gen.Double[-30, 30], Gen.Double[0, 30]).Sample((parts, from, width) =>
        {
            var distribution = MeasurandDistribution.Of(parts);
            var all = distribution.Above(-from) + distribution.Between(from, from + width) + distribution.Above(from + width);
            return Math.Abs(all - 1) < 1e-8;
        });

    // A worse meter: the same readings, its accuracy or its step wider.
    [Fact]
    public void Worse_meter_never_gives_a_smaller_uncertainty_or_a_better_answer() =>
        Gen.Select(
            Gen.Double[0.5, 10], Gen.Double[-0.2, 0.2].Array[0, 5], Gen.Double[0, 3], Gen.Double[0, 5],
            Gen.Double[1e-3, 0.1], Gen.Double[1, 10]).Sample((value, others, percent, counts, step, times) =>
        {
            double[] values = [value, .. others.Select(offset => value + offset)];
            var better = Some.Reading(values, percent, counts, step);
            var worse = Some.Reading(values, percent * times, counts, step * times);
            var limits = Limits.Of(null, value + 0.5);
            return Estimate.Of(worse).ExpandedUncertainty >= Estimate.Of(better).ExpandedUncertainty * (1 - Slack)
                && (!ConformityRule.Decide(better, limits).Decision.IsUnclear() || ConformityRule.Decide(worse, limits).Decision.IsUnclear());
        });

    [Fact]
    public void Conditional_answer_is_never_beside_near_certainty() =>
        Gen.Select(Gen.Double[-0.3, 0.3].Array[1, 6], Gen.Double[0, 3], Gen.Double[1e-3, 0.1], Gen.Double[-1, 1]).Sample(
            (values, percent, step, upper) =>
            {
                var conformity = ConformityRule.Decide(Some.Reading(values, percent, 1, step), Limits.Of(null, upper));
                return conformity.Decision switch
                {
                    Decision.ConditionalPass => conformity.ProbabilityOfConformity is >= 0.5 - 1e-8 and <= 0.97725 + 1e-8,
                    Decision.ConditionalFail => conformity.ProbabilityOfConformity is <= 0.5 + 1e-8 and >= 0.02275 - 1e-8,
                    Decision.Pass => conformity.ProbabilityOfConformity >= 0.97725 - 1e-8,
                    _ => conformity.ProbabilityOfConformity <= 0.02275 + 1e-8,
                };
            });
}
