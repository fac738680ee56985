using BenchmarkDotNet.Attributes;
using InspectLog.Measuring;

namespace InspectLog.Benchmarks.Measuring;

/// <summary>What a decision costs. It must stay under 5 µs and allocate nothing beyond its result: the record and its
/// array of contributions.</summary>
[MemoryDiagnoser]
public class DecisionBenchmark
{
    private readonly Limits _limits = Limits.Of(0.6, 2.0);
    private readonly DisplayedReading _single = new([0.72], new Accuracy(0.8, 3), 0.01);
    private readonly DisplayedReading _repeats = new([0.72, 0.70, 0.73, 0.71], new Accuracy(0.8, 3), 0.01);
    private readonly DisplayedReading _close = new([12.612, 12.613, 12.611, 12.614], new Accuracy(0.5, 2), 0.001);
    private readonly Bracket _bracket = new(1.9, 2.1);
    private readonly DisplayedReading _full = new([2.15, 2.13, 2.16], new Accuracy(0.8, 3), 0.01)
    {
        Leads = new TestLeads([0.21, 0.20], new Accuracy(0.8, 3), 0.01, SameInstrument: true),
        Allowances = [new Allowance(AllowanceSource.Operator, 0.01)],
        Winding = new WindingTemperature(35, 20, 5),
    };

    private readonly DecisionRule _risk = DecisionRule.Risk(0.05);

    /// <summary>One displayed value.</summary>
    [Benchmark]
    public Conformity OneValue() => ConformityRule.Decide(_single, _limits);

    /// <summary>Four repeats: effective degrees of freedom and a quantile of Student's t.</summary>
    [Benchmark]
    public Conformity FourRepeats() => ConformityRule.Decide(_repeats, _limits);

    /// <summary>Four repeats so close that their differences are taken in decimal.</summary>
    [Benchmark]
    public Conformity CloseRepeats() => ConformityRule.Decide(_close, _limits);

    /// <summary>A bracket between gauges.</summary>
    [Benchmark]
    public Conformity BetweenGauges() => ConformityRule.Decide(_bracket, _limits);

    /// <summary>Repeats less their test leads, with an allowance, referred to 20 °C.</summary>
    [Benchmark]
    public Conformity WholeBudget() => ConformityRule.Decide(_full, _limits);

    /// <summary>One displayed value under the rule of a chosen risk.</summary>
    [Benchmark]
    public Conformity ChosenRisk() => ConformityRule.Decide(_single, _limits, _risk);
}
