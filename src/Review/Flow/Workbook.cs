using Nookwright.Cutting;
using Nookwright.Design;
using Nookwright.Parts;
using Nookwright.Projects;
using Nookwright.Survey;
using Nookwright.Trouble;

namespace Nookwright.Flow;

/// <summary>Everything derived from one document, each step with its findings: what the faces show and the packet prints.</summary>
/// <param name="Project">The document.</param>
/// <param name="Room">The recess.</param>
/// <param name="BuiltIn">Pieces and panels in place.</param>
/// <param name="PartList">Everything to make.</param>
/// <param name="CutRequest">What the plan was asked for.</param>
/// <param name="Plan">The cutting plan, executed by the virtual saw; null until it is ready or when there is nothing to cut.</param>
/// <param name="Findings">Every finding of every step.</param>
public sealed record Workbook(
    Project Project,
    Room Room,
    BuiltIn BuiltIn,
    PartList PartList,
    CutRequest CutRequest,
    Plan? Plan,
    IReadOnlyList<Finding> Findings
);
