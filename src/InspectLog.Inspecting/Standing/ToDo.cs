using InspectLog.Checks;

namespace InspectLog.Inspecting.Standing;

/// <summary>Which check comes next. Pure.</summary>
public static class ToDo
{
    /// <summary>The next check that is to do after another, or the first; null when none is.</summary>
    public static Check? Next(BenchScene scene, Check? after)
    {
        var (_, inspection, sheet) = scene;
        var progress = Standings.OfAll(inspection, sheet);
        return after is null ? First(sheet, progress) : Next(sheet, progress, after);
    }

    /// <summary>The first check that is to do; null when none is.</summary>
    public static Check? First(CheckSheet sheet, IReadOnlyDictionary<string, CheckProgress> progress) =>
        sheet.Checks.FirstOrDefault(check => progress[check.Id].IsToDo);

    /// <summary>The next check that is to do after another, from the top again after the last; null when none is.</summary>
    public static Check? Next(CheckSheet sheet, IReadOnlyDictionary<string, CheckProgress> progress, Check after)
    {
        var others = sheet.Checks.SkipWhile(check => check != after).Skip(1)
            .Concat(sheet.Checks.TakeWhile(check => check != after));
        return others.FirstOrDefault(check => progress[check.Id].IsToDo);
    }
}
