namespace InspectLog.Measuring.Tests;

/// <summary>Reads the readings of decide.csv; decide_cases.py says how they are written.</summary>
internal static class ReferenceReading
{
    /// <summary>What is known of the value behind it.</summary>
    internal static Estimate Estimate(string words, Evaluation evaluation)
    {
        var parts = words[1..].Split('|');
        return words[0] switch
        {
            'u' => Measuring.Estimate.Known(
                Reference.Number(parts[0]), Reference.Number(parts[1]), Reference.Maybe(parts[2]) ?? double.PositiveInfinity, evaluation),
            'b' => Measuring.Estimate.Of(
                new Bracket(Reference.Number(parts[0]), Reference.Number(parts[1])) { GaugeUncertainty = Reference.Number(parts[2]) },
                evaluation),
            'f' => Measuring.Estimate.Of(FeelerBlades.Bracket(Blades(parts[0]), Blades(parts[1])), evaluation),
            _ => Measuring.Estimate.Of(Displayed(words), evaluation),
        };
    }

    private static Blade[] Blades(string text) =>
        [.. text.Split(';').Select(blade => Reference.Numbers(blade, '~')).Select(blade => new Blade(blade[0], blade[1]))];

    private static DisplayedReading Displayed(string words)
    {
        DisplayedReading reading = new([0], new(0, 0), 1);
        List<Allowance> allowances = [];
        foreach (var word in words.Split(' '))
        {
            var rest = word[1..];
            var parts = rest.Split('|');
            reading = word[0] switch
            {
                'v' => reading with { Values = Reference.Numbers(rest) },
                'a' => reading with { Accuracy = Accuracy(rest) },
                'r' => reading with { Resolution = Reference.Number(rest) },
                'k' => reading with { Scatter = new(Reference.Number(parts[0]), Reference.Maybe(parts[1])) },
                'l' => reading with
                {
                    Leads = new(Reference.Numbers(parts[0]), Accuracy(parts[1]), Reference.Number(parts[2]), parts[3] == "s"),
                },
                'w' => reading with { Winding = Winding(Reference.Numbers(rest, '|')) },
                _ => reading,
            };
            if (Shape(word[0]) is { } shape)
            {
                allowances.Add(new(AllowanceSource.Method, Reference.Number(rest), shape));
            }
        }

        return allowances.Count > 0 ? reading with { Allowances = allowances } : reading;
    }

    private static Accuracy Accuracy(string text)
    {
        var parts = Reference.Numbers(text, '+');
        return new(parts[0], parts[1]);
    }

    private static WindingTemperature Winding(double[] parts) => new(parts[0], parts[1], parts[2], parts[3]);

    private static AllowanceShape? Shape(char letter) => letter switch
    {
        'e' => AllowanceShape.Even,
        't' => AllowanceShape.Triangular,
        'n' => AllowanceShape.TwoStandardDeviations,
        _ => null,
    };
}
