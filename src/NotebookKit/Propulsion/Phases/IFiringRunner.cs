namespace NotebookKit.Propulsion.Phases;

/// <summary>Something to do with a firing once its laws are bound at compile time.</summary>
internal interface IFiringRunner<TMount>
    where TMount : struct, IMount
{
    void Run<TAir>(in FiringSetup setup, TMount mount, TAir air)
        where TAir : struct, IAirPhase<TAir>;
}
