package org.pullproof.ui.parts;

import java.util.function.Supplier;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;

/** A field for one quantity; a bare figure takes the unit that stands beside the field. */
public final class QuantityField extends CheckedField<Quantity> {

    /**
     * @param name what is asked
     * @param beside the unit shown beside the field at the moment of reading
     */
    public QuantityField(String name, Supplier<Unit> beside) {
        super(name, text -> Quantity.parse(Typed.unmistakable(text), beside.get()));
        readsAtRest(Figures::typed);
    }

    public QuantityField(String name, Unit beside) {
        this(name, () -> beside);
    }
}
