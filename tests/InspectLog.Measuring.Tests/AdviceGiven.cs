namespace InspectLog.Measuring.Tests;

/// <summary>Twenty thousand readings drawn by chance, the same ones every time, with the advice on each.</summary>
public sealed class AdviceGiven
{
    private const int Budgets = 20_000;
    private const int Shown = 5;

    private readonly List<(SomeBudget Budget, Advice? Advice, double Now, string? Problem)> _all = [];

    /// <summary>Draws the readings and asks for advice.</summary>
    public AdviceGiven()
    {
        var some = new SomeBudgets(20_250_101);
        for (var i = 0; i < Budgets; i++)
        {
            _all.Add(Advised(some.Next()));
        }
    }

    /// <summary>Whether something holds of every reading. It says what is wrong, or null.</summary>
    internal void Holds(Func<SomeBudget, Advice, double, string?> wrong)
    {
        List<string> failures = [];
        foreach (var (budget, advice, now, problem) in _all)
        {
            if ((advice is null ? problem : Guarded(() => wrong(budget, advice, now))) is { } found)
            {
                failures.Add($"{found}: {Describe(budget)}");
            }
        }

        Assert.True(
            failures.Count == 0, $"{failures.Count} of {Budgets} fail; the first:\n{string.Join('\n', failures.Take(Shown))}");
    }

    private static (SomeBudget Budget, Advice? Advice, double Now, string? Problem) Advised(SomeBudget budget)
    {
        Advice? advice = null;
        var now = 0.0;
        var problem = Guarded(() =>
        {
            now = Estimate.Of(budget.Reading, budget.Evaluation).ExpandedUncertainty;
            advice = Advice.For(budget.Reading, budget.Limits, budget.Instrument, budget.Evaluation);
            return null;
        });
        return (budget, advice, now, problem);
    }

    private static string? Guarded(Func<string?> check)
    {
        try
        {
            return check();
        }
        catch (Exception problem) when (problem is not OutOfMemoryException)
        {
            return $"{problem.GetType().Name}: {problem.Message}";
        }
    }

    private static string Describe(SomeBudget budget) => budget.Reading switch
    {
        DisplayedReading reading => string.Join(
            ' ', string.Join(';', reading.Values), reading.Accuracy, $"step {reading.Resolution}", reading.Scatter,
            reading.Leads is { } leads ? $"leads {string.Join(';', leads.Values)} {leads}" : "",
            string.Join(' ', reading.Allowances ?? []), reading.Winding, budget.Limits, budget.Evaluation,
            string.Join(' ', budget.Instrument?.Ranges ?? [])),
        _ => string.Join(' ', string.Join('+', budget.Goes), string.Join('+', budget.Stops), budget.Limits, budget.Evaluation),
    };
}
