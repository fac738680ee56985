namespace InspectLog.Photos.Alignment;

/// <summary>Lays an earlier picture over a later one of the same view: turned about its middle, made larger, then shifted.
/// </summary>
/// <param name="Turn">Degrees, clockwise as seen.</param>
/// <param name="Scale">Factor on lengths in parts of the picture's width.</param>
/// <param name="ShiftX">To the right, parts of the later picture's width.</param>
/// <param name="ShiftY">Down, parts of the later picture's width.</param>
/// <param name="Score">How well it fits, 0 to 1: the correlation of what both show, brightness and contrast evened out.</param>
public sealed record ViewTransform(double Turn, double Scale, double ShiftX, double ShiftY, double Score);
