namespace NotebookKit.Propulsion.Phases;

/// <summary>Something to do with a firing once its laws are bound at compile time.</summary>
internal interface IFiringRunner<TMount>
    where TMount : struct, IMount
{
    void Run<TExpansion, TAir>(in FiringSetup setup, TExpansion expansion, TMount mount, TAir air)
        where TExpansion : struct, IExpansionLaw<TExpansion>
        where TAir : struct, IAirPhase<TAir>;
}
