namespace InspectLog.Archives.Making;

/// <summary>Names that nothing has yet.</summary>
internal static class FreeNames
{
    private const int Most = 1000;

    /// <summary>Gives something the first free name: its own, or else with a number after it. Nothing is overwritten.</summary>
    /// <param name="folder">The folder it is to lie in.</param>
    /// <param name="name">Its name.</param>
    /// <param name="ending">What the name ends with.</param>
    /// <param name="move">Moves it there; fails where something has the name.</param>
    /// <returns>Where it is now.</returns>
    /// <exception cref="IOException">It could not be moved.</exception>
    public static string Take(string folder, string name, string ending, Action<string> move)
    {
        for (var n = 1; ; n++)
        {
            var place = Path.Combine(folder, n == 1 ? name + ending : FormattableString.Invariant($"{name}-{n}{ending}"));
            try
            {
                if (!Path.Exists(place))
                {
                    move(place);
                    return place;
                }
            }
            catch (IOException) when (Path.Exists(place) && n < Most)
            {
                // Somebody was quicker; the next name may be free.
            }
        }
    }
}
