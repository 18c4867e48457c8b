//! Where the fill line is: heights and volumes inside a container whose shape is known.

use super::{FillError, fill};
use crate::book::{Brimful, Container, Reading};
use crate::foundation::measure::{Length, Overflow, Volume};
use crate::foundation::shape::{Inside, LevelError, Pouring, PouringError, Pourings, level};

/// Where a container is filled to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct FillLine {
    /// Above the inner base.
    pub above_base: Length,
    /// Below the rim.
    pub below_rim: Length,
}

/// The inside of a container. Returns `None` if only its volume is known.
///
/// # Errors
/// [`FillError::NotAVolume`] for readings that do not rise; a book refuses them.
pub fn inside(container: &Container) -> Result<Option<Box<dyn Inside>>, FillError> {
    match &container.brimful {
        Brimful::Weighed(_) => Ok(None),
        Brimful::Tapered(tapered) => Ok(Some(Box::new(tapered.frustum()?))),
        Brimful::Poured(readings) => {
            let readings: Vec<Pouring> = readings.iter().map(|it| pouring(container, it)).collect::<Result<_, _>>()?;
            match Pourings::new(&readings) {
                Ok(pourings) => Ok(Some(Box::new(pourings))),
                Err(PouringError::Arithmetic(overflow)) => Err(overflow.into()),
                Err(_) => Err(FillError::NotAVolume(container.id)),
            }
        }
    }
}

fn pouring(container: &Container, reading: &Reading) -> Result<Pouring, FillError> {
    let volume = reading.volume.volume()?.ok_or(FillError::NotAVolume(container.id))?;
    Ok(Pouring { height: reading.height.length()?, volume })
}

/// The volume that is left empty down to `below` under the rim. Returns `None` if no heights are
/// known.
pub(super) fn empty_under(container: &Container, below: Length) -> Result<Option<Volume>, FillError> {
    let Some(inside) = inside(container)? else { return Ok(None) };
    let height = inside.height();
    Ok(Some(inside.volume_at(height)?.minus(inside.volume_at(height.minus(below)?)?)?.as_part()))
}

/// How high `volume` stands above the inner base, within a millionth of a millimetre. Returns
/// `None` if no heights are known.
///
/// # Errors
/// [`FillError::OverTheRim`] for more than the container holds.
pub fn height_of(container: &Container, volume: Volume) -> Result<Option<Length>, FillError> {
    let Some(inside) = inside(container)? else { return Ok(None) };
    match level(inside.as_ref(), volume) {
        Ok(height) => Ok(Some(height)),
        Err(LevelError::OverTheRim { over }) => Err(FillError::OverTheRim { container: container.id, over }),
        Err(LevelError::Negative) => Err(FillError::NothingFits(container.id)),
        Err(LevelError::Arithmetic(overflow)) => Err(overflow.into()),
    }
}

/// The volume up to `height` above the inner base, at most to the rim. Returns `None` if no heights
/// are known.
///
/// # Errors
/// A [`FillError`].
pub fn volume_to(container: &Container, height: Length) -> Result<Option<Volume>, FillError> {
    let volume = inside(container)?.map(|inside| inside.volume_at(height)).transpose()?;
    Ok(volume.map(Volume::as_part))
}

/// Where a container is filled to. Returns `None` if no heights are known.
///
/// # Errors
/// A [`FillError`].
pub fn fill_line(container: &Container) -> Result<Option<FillLine>, FillError> {
    let Some(above_base) = height_of(container, fill(container)?.volume)? else { return Ok(None) };
    let height = container.brimful.height()?.ok_or(Overflow::TooLarge)?;
    Ok(Some(FillLine { above_base, below_rim: height.minus(above_base)? }))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{Headspace, Tapered};
    use crate::support::{amount, container, container_id, exact, length, millilitres, share};

    fn millimetres(text: &str) -> Length {
        Length::from_millimetres(exact(text))
    }

    /// A cylinder of 80 mm across and 100 mm high: 502.654825 mL.
    fn tumbler(headspace: Headspace) -> Container {
        let shape = Tapered { base: length("8 cm"), rim: length("80 mm"), height: length("100 mm") };
        Container { brimful: Brimful::Tapered(shape), headspace, ..container(1, "1 L") }
    }

    #[test]
    fn headspace_by_height_is_its_volume() {
        let filled = fill(&tumbler(Headspace::Height(length("1 cm")))).unwrap();
        assert_eq!(filled.brimful.millilitres().rounded(6), exact("502.654825"));
        assert_eq!(filled.headspace.millilitres().rounded(6), exact("50.265482"));
        let line = fill_line(&tumbler(Headspace::Height(length("1 cm")))).unwrap().unwrap();
        assert_eq!(line.above_base.millimetres().rounded(5), exact("90"));
        assert_eq!(line.below_rim.millimetres().rounded(5), exact("10"));
    }

    #[test]
    fn a_share_of_a_cylinder_is_a_share_of_its_height() {
        let line = fill_line(&tumbler(Headspace::Share(share("0.25")))).unwrap().unwrap();
        assert_eq!(line.above_base.millimetres().rounded(5), exact("75"));
        let half = volume_to(&tumbler(Headspace::Share(share("0"))), millimetres("50")).unwrap().unwrap();
        assert_eq!(half.millilitres().rounded(6), exact("251.327412"));
    }

    #[test]
    fn readings_tell_heights() {
        let reading = |height, volume| Reading { height: length(height), volume: amount(volume) };
        let straight = vec![reading("50 mm", "100 mL"), reading("100 mm", "200 mL"), reading("150 mm", "300 mL")];
        let bottle = Container {
            brimful: Brimful::Poured(straight),
            headspace: Headspace::Height(length("30 mm")),
            ..container(1, "1 L")
        };
        assert_eq!(fill(&bottle).map(|fill| fill.volume), Ok(millilitres("240")));
        assert_eq!(height_of(&bottle, millilitres("150")), Ok(Some(millimetres("75"))));
        let over = FillError::OverTheRim { container: container_id(1), over: millilitres("5") };
        assert_eq!(height_of(&bottle, millilitres("305")), Err(over));
    }

    #[test]
    fn a_weighed_container_has_no_heights() {
        assert_eq!(fill_line(&container(1, "1 L")), Ok(None));
        assert_eq!(height_of(&container(1, "1 L"), millilitres("1")), Ok(None));
    }
}
