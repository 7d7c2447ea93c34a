#include "ui/bringing_in/unplaced_part.h"

#include <QComboBox>

#include "indexer/intake/tagging.h"
#include "ui/bringing_in/import_words.h"
#include "ui/bringing_in/photo_picker.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/parts.h"

namespace quarterturn {
namespace {

QString heading(const UnplacedGroup& group) {
    const int count = static_cast<int>(group.photos.size());
    if (!group.fits.empty()) {
        return UnplacedPart::tr("%n photo(s) taken during more than one sitting", nullptr, count);
    }
    if (!group.photos.front().moment) {
        return UnplacedPart::tr("%n photo(s) without a time", nullptr, count);
    }
    return UnplacedPart::tr("%n photo(s) taken when there was no sitting", nullptr, count);
}

}  // namespace

UnplacedPart::UnplacedPart(Session& session, const UnplacedGroup& group, QWidget* parent)
    : QFrame(parent),
      session_(session),
      picker_(new PhotoPicker(session, group.photos, PhotoPicker::Choice::several)),
      sitting_(new QComboBox),
      place_(make_next_button({})) {
    for (const Photo& photo : group.photos) all_.push_back(photo.id);
    setProperty("kind", QStringLiteral("card"));
    fill_choices(group.fits.empty() ? group.nearby : group.fits);
    sitting_->setAccessibleName(tr("Sitting they belong to"));
    connect(picker_, &PhotoPicker::choice_changed, this, &UnplacedPart::show_count);
    connect(place_, &QPushButton::clicked, this, &UnplacedPart::place);
    show_count();

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space(6), space(5), space(6), space(5));
    column->setSpacing(space(3));
    column->addWidget(make_heading(heading(group)));
    column->addWidget(make_quiet(
        all_.size() == 1 ? tr("Where does it belong?")
                         : tr("Where do they belong? Choose some, or place all of them at once.")));
    column->addWidget(picker_);
    auto* row = new FlowLayout(space(2));
    row->addWidget(sitting_);
    row->addWidget(place_);
    column->addLayout(row);
}

void UnplacedPart::fill_choices(const std::vector<Sitting>& sittings) {
    for (const Sitting& sitting : sittings) {
        sitting_->addItem(sitting_shown(session_.library(), sitting), qint64{sitting.id.value});
    }
    sitting_->addItem(tr("to none of them"), qint64{0});
}

std::vector<PhotoId> UnplacedPart::meant() const {
    const auto chosen = picker_->chosen();
    return chosen.empty() ? all_ : chosen;
}

void UnplacedPart::show_count() {
    const int chosen = static_cast<int>(picker_->chosen().size());
    const bool all = chosen == 0 && all_.size() > 1;
    place_->setText(all ? tr("Place all of them there")
                        : tr("Place %n photo(s) there", nullptr, std::max(chosen, 1)));
    place_->updateGeometry();
}

void UnplacedPart::place() {
    const qint64 number = sitting_->currentData().toLongLong();
    const auto sitting = number == 0 ? std::nullopt : std::optional{SittingId{number}};
    session_.change_photos(
        [photos = meant(), sitting](Library& library) { place_by_hand(library, photos, sitting); });
}

}  // namespace quarterturn
