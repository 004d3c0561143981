/**
 * What the engine is and how it is set: profile, banks, firing order, crank geometry, setups. Start with {@link
 * org.pullproof.engine.EngineProfile}. Nothing measured belongs here.
 */
@NullMarked
package org.pullproof.engine;

import org.jspecify.annotations.NullMarked;
