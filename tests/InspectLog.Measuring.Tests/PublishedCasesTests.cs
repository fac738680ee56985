using System.Text.RegularExpressions;

namespace InspectLog.Measuring.Tests;

/// <summary>The list of published cases names tests that are there.</summary>
public partial class PublishedCasesTests
{
    [Fact]
    public void Every_test_in_the_list_of_published_cases_is_there()
    {
        var page = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "PUBLISHED.md"));
        var named = TestName().Matches(page).Select(match => match.Groups[1].Value).ToList();
        var there = typeof(PublishedCasesTests).Assembly.GetTypes()
            .SelectMany(type => type.GetMethods())
            .Select(method => method.Name)
            .ToHashSet(StringComparer.Ordinal);

        Assert.True(named.Count > 30);
        Assert.All(named, name => Assert.Contains(name, there));
    }

    [GeneratedRegex("`([A-Z][A-Za-z0-9]*_[A-Za-z0-9_]+)`")]
    private static partial Regex TestName();
}
