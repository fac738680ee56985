namespace InspectLog.Measuring;

/// <summary>Estimates the value behind a displayed reading.</summary>
internal static class DisplayedEstimate
{
    internal static Estimate Of(DisplayedReading reading, Evaluation evaluation)
    {
        Refuse.BadInstrument(reading.Accuracy, reading.Resolution);
        var sample = Sample.Of(reading.Values);
        var leads = Leads(reading.Leads);
        var contributions = new Contribution[Count(reading, sample, leads)];
        var value = Fill(contributions, reading, sample, leads);
        LargestFirst(contributions);

        return Estimate.From(value, contributions, evaluation) with
        {
            Readings = sample.Count,
            ScatterUnknown = sample.Count == 1 && reading.Scatter is null,
        };
    }

    private static Sample? Leads(TestLeads? leads)
    {
        if (leads is null)
        {
            return null;
        }

        Refuse.BadInstrument(leads.Accuracy, leads.Resolution);
        return Sample.Of(leads.Values);
    }

    // The array is part of the result, so it is made once, in its final size.
    private static int Count(DisplayedReading reading, in Sample sample, in Sample? leads) =>
        2
        + (sample.Count > 1 || reading.Scatter is not null ? 1 : 0)
        + (leads is null ? 0 : 2)
        + (leads?.Count > 1 ? 1 : 0)
        + (reading.Allowances?.Count ?? 0)
        + (reading.Winding is null ? 0 : 1);

    private static double Fill(
        Contribution[] contributions, DisplayedReading reading, in Sample sample, in Sample? leads)
    {
        var halfWidth = reading.Accuracy.HalfWidth(sample.Mean, reading.Resolution);
        var next = 0;
        var value = sample.Mean + reading.Correction.GetValueOrDefault();
        if (reading.Leads is { } lead && leads is { } leadSample)
        {
            if (lead.SameInstrument)
            {
                halfWidth = CommonGain(reading, sample.Mean, lead, leadSample.Mean)
                    + reading.Accuracy.HalfWidth(0, reading.Resolution);
            }

            value -= leadSample.Mean;
            next = FillLeads(contributions, lead, leadSample);
        }

        contributions[next++] = Known(ContributionNames.Accuracy, Budget.Rectangular(halfWidth));
        contributions[next++] = Known(ContributionNames.DisplayStep, Budget.Rectangular(reading.Resolution / 2));
        if (sample.Count > 1 || reading.Scatter is not null)
        {
            contributions[next++] = Spread(
                sample.Count > 1 ? ContributionNames.Repeats : ContributionNames.EarlierRepeats,
                Scatter.Of(sample, reading.Scatter), sample.Count);
        }

        for (var i = 0; i < reading.Allowances?.Count; i++)
        {
            Refuse.BadAllowance(reading.Allowances[i]);
            contributions[next++] = reading.Allowances[i].Contribution;
        }

        return reading.Winding is { } winding ? Refer(contributions, next, value, winding) : value;
    }

    // The share of the error that is in proportion to the reading, where one instrument took both readings: whatever it
    // is, it is the same share of both.
    private static double CommonGain(DisplayedReading reading, double mean, TestLeads leads, double leadMean) =>
        Math.Abs((reading.Accuracy.PercentOfReading / 100 * mean) - (leads.Accuracy.PercentOfReading / 100 * leadMean));

    private static int FillLeads(Contribution[] contributions, TestLeads leads, in Sample sample)
    {
        var next = 0;
        contributions[next++] = leads.SameInstrument
            ? Known(ContributionNames.LeadCounts, Budget.Rectangular(leads.Accuracy.HalfWidth(0, leads.Resolution)))
            : Known(
                ContributionNames.LeadAccuracy,
                Budget.Rectangular(leads.Accuracy.HalfWidth(sample.Mean, leads.Resolution)));
        contributions[next++] = Known(ContributionNames.LeadDisplayStep, Budget.Rectangular(leads.Resolution / 2));
        if (sample.Count > 1)
        {
            contributions[next++] = Spread(ContributionNames.LeadRepeats, Scatter.Of(sample, null), sample.Count);
        }

        return next;
    }

    private static double Refer(Contribution[] contributions, int next, double value, WindingTemperature winding)
    {
        Copper.RefuseBad(winding);
        foreach (ref var contribution in contributions.AsSpan(0, next))
        {
            contribution = contribution with
            {
                StandardUncertainty = contribution.StandardUncertainty * winding.Factor,
            };
        }

        var referred = value * winding.Factor;
        contributions[next] = Known(
            ContributionNames.WindingTemperature,
            Math.Abs(referred) * winding.ShareForEachDegree * Budget.Rectangular(winding.HalfWidth));
        return referred;
    }

    private static Contribution Known(string name, double standardUncertainty) =>
        new(name, standardUncertainty, double.PositiveInfinity) { Shape = ContributionShape.Even };

    private static Contribution Spread(string name, Scatter scatter, int count) =>
        new(name, scatter.StandardDeviation / Math.Sqrt(count), scatter.DegreesOfFreedom)
        {
            Shape = double.IsFinite(scatter.DegreesOfFreedom) ? ContributionShape.Student : ContributionShape.Normal,
        };

    // By hand because there are a few, and Array.Sort would allocate for its comparison.
    private static void LargestFirst(Contribution[] contributions)
    {
        for (var i = 1; i < contributions.Length; i++)
        {
            for (var j = i; j > 0
                 && contributions[j].StandardUncertainty > contributions[j - 1].StandardUncertainty; j--)
            {
                (contributions[j], contributions[j - 1]) = (contributions[j - 1], contributions[j]);
            }
        }
    }
}
