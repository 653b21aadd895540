using Google.OrTools.Sat;
using Google.OrTools.Util;
using Nookwright.Cutting;
using Nookwright.Projects;

namespace Nookwright.Bench;

/// <summary>One material of a job as a plain CP-SAT model: where does each part lie, on as few sheets as possible?</summary>
/// <remarks>
/// All sheets lie end to end in one long strip that no two parts may overlap in; a part may start only where it does not cross from one
/// sheet to the next. Kerf is added to parts and sheet, dressing taken off the sheet, a running grain is one part as wide as
/// its members. It may take twice as many sheets as the area asks for. Left out, each of which makes the model's work easier than the planner's: that cuts go from edge to edge, that
/// a dimension is visited once and in what order, the breakdown, and what the saws reach.
/// </remarks>
internal sealed class PlacementModel
{
    private readonly CpModel _model = new();
    private readonly IntVar _sheets;
    private readonly NoOverlap2dConstraint _apart;
    private readonly long _x;
    private readonly long _y;
    private readonly int _most;

    /// <param name="job">The job.</param>
    /// <param name="material">The material.</param>
    public PlacementModel(CutRequest job, string material)
    {
        var sheet = job.Stock.First(s => s.Material == material);
        var (kerf, dressing) = (Steps(job.Saws.TableKerf), Steps(job.Saws.Dressing));
        (_x, _y) = (Steps(sheet.Length) - (2 * dressing) + kerf, Steps(sheet.Width) - (2 * dressing) + kerf);
        var rectangles = Rectangles(job, material, kerf).ToList();
        var area = rectangles.Sum(r => (double)(r.Length + kerf) * (r.Width + kerf)) / ((double)_x * _y);
        var least = (int)Math.Ceiling(area);
        _most = Math.Min(rectangles.Count, 2 * least);
        _sheets = _model.NewIntVar(least, _most, "sheets");
        _apart = _model.AddNoOverlap2D();
        foreach (var (length, width, figure) in rectangles)
            Place(length + kerf, width + kerf, figure);
        _model.Minimize(_sheets);
    }

    /// <summary>Looks for few sheets.</summary>
    /// <param name="seconds">For how long at most.</param>
    /// <returns>Every better answer: after how many seconds, how many sheets; and whether the last is proven fewest.</returns>
    public (IReadOnlyList<(double Seconds, int Sheets)> Better, bool IsProven) Solve(double seconds)
    {
        var solver = new CpSolver
        {
            StringParameters = FormattableString.Invariant(
                $"max_time_in_seconds:{seconds} num_workers:{Environment.ProcessorCount} random_seed:1"
            ),
        };
        var heard = new Heard(_sheets);
        var status = solver.Solve(_model, heard);
        return (heard.Better, status == CpSolverStatus.Optimal);
    }

    private void Place(long length, long width, PanelFigure figure)
    {
        var ways = new List<(long X, long Y)>();
        if (figure != PanelFigure.Width)
            ways.Add((length, width));
        if (figure != PanelFigure.Length)
            ways.Add((width, length));
        var taken = ways.Where(w => w.X <= _x && w.Y <= _y).Select(w => Lie(w.X, w.Y)).ToList();
        _model.AddExactlyOne(taken);
    }

    private BoolVar Lie(long x, long y)
    {
        var isTaken = _model.NewBoolVar("");
        var starts = Enumerable.Range(0, _most).Select(s => new[] { s * _x, ((s + 1) * _x) - x }).ToArray();
        var start = _model.NewIntVarFromDomain(Domain.FromIntervals(starts), "");
        var across = _model.NewIntVar(0, _y - y, "");
        _apart.AddRectangle(
            _model.NewOptionalFixedSizeIntervalVar(start, x, isTaken, ""),
            _model.NewOptionalFixedSizeIntervalVar(across, y, isTaken, "")
        );
        _model.Add(start + x <= _sheets * _x).OnlyEnforceIf(isTaken);
        return isTaken;
    }

    private static IEnumerable<(long Length, long Width, PanelFigure Figure)> Rectangles(
        CutRequest job,
        string material,
        long kerf
    )
    {
        var parts = job.Parts.Where(p => p.Material == material).ToDictionary(p => p.Id);
        foreach (var run in job.Runs.Where(r => parts.ContainsKey(r.Parts[0])))
        {
            var members = run.Parts.Select(id => parts[id]).ToList();
            long Together(Func<CutPart, long> side) => members.Sum(side) + ((members.Count - 1) * kerf);
            yield return run.Height == MatchedSide.Width
                ? (Together(p => Steps(p.Length)), Steps(members[0].Width), members[0].Figure)
                : (Steps(members[0].Length), Together(p => Steps(p.Width)), members[0].Figure);
        }
        var inRuns = job.Runs.SelectMany(r => r.Parts).ToHashSet();
        foreach (var part in parts.Values.Where(p => !inRuns.Contains(p.Id)))
            yield return (Steps(part.Length), Steps(part.Width), part.Figure);
    }

    /// <summary>In tenths of a millimetre; every size of these jobs is a whole number of them.</summary>
    private static long Steps(Measure.Length length) => length.Nanometres / 100_000;

    private sealed class Heard(IntVar sheets) : CpSolverSolutionCallback
    {
        public List<(double Seconds, int Sheets)> Better { get; } = [];

        public override void OnSolutionCallback() => Better.Add((WallTime(), (int)Value(sheets)));
    }
}
