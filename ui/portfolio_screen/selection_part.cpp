#include "ui/portfolio_screen/selection_part.h"

#include <QComboBox>
#include <QLineEdit>
#include "indexer/portfolio/candidates.h"

#include "ui/portfolio_screen/photo_edits.h"
#include "ui/portfolio_screen/selection_strip.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int name_field_steps = 60;

}  // namespace

SelectionPart::SelectionPart(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      names_(new QComboBox),
      name_(new QLineEdit),
      forget_(make_quiet_button(tr("Forget it"))),
      count_(make_quiet({})),
      hint_(make_quiet(tr("Nothing is chosen yet. Choose a photo above, and it is put here; drag "
                          "the photos into their order, or move one by Ctrl and an arrow key."))),
      strip_(new SelectionStrip(session)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space(2));
    column->addLayout(build_head());
    column->addWidget(hint_);
    column->addWidget(strip_);
    connect(strip_, &SelectionStrip::ordered, this, &SelectionPart::keep);
    connect(strip_, &SelectionStrip::taken_out, this, &SelectionPart::toggle);
    connect(strip_, &SelectionStrip::looked_at, this, &SelectionPart::looked_at);
}

QLayout* SelectionPart::build_head() {
    names_->setAccessibleName(tr("Which selection"));
    names_->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    name_->setAccessibleName(tr("Name of the selection"));
    name_->setPlaceholderText(tr("Name it"));
    name_->setFixedWidth(space(name_field_steps));
    count_->setWordWrap(false);
    connect(names_, &QComboBox::activated, this, &SelectionPart::choose);
    connect(name_, &QLineEdit::editingFinished, this, &SelectionPart::rename);
    connect(forget_, &QPushButton::clicked, this, [this] {
        const PhotoSelection forgotten = std::exchange(in_hand_, {});
        if (!session_.change_records(forget_selection(forgotten))) in_hand_ = forgotten;
    });
    auto* row = new FlowLayout(space(3));
    QLabel* heading = make_heading(tr("Selection"));
    heading->setWordWrap(false);
    row->addWidget(heading);
    row->addWidget(names_);
    row->addWidget(name_);
    row->addWidget(count_);
    row->addWidget(forget_);
    return row;
}

void SelectionPart::refresh() {
    const auto all = session_.library().selections().all();
    const auto kept = std::ranges::find(all, in_hand_.name, &PhotoSelection::name);
    if (kept != all.end()) {
        in_hand_ = *kept;
    } else {
        in_hand_ =
            in_hand_.name.empty() && !all.empty() && in_hand_.photos.empty() && names_->count() == 0
                ? all.front()
                : PhotoSelection{};
    }
    fill_names(all);
    const std::vector<Photo> photos = photos_in(session_.library(), in_hand_);
    strip_->show_photos(photos);
    strip_->setVisible(!photos.empty());
    hint_->setVisible(photos.empty());
    count_->setText(tr("%n photo(s)", nullptr, static_cast<int>(photos.size())));
    count_->setVisible(!photos.empty());
    if (!name_->isModified()) name_->setText(from_utf8(in_hand_.name));
    name_->setVisible(!in_hand_.name.empty());
    forget_->setVisible(!in_hand_.name.empty());
    emit changed();
}

void SelectionPart::fill_names(const std::vector<PhotoSelection>& all) {
    names_->clear();
    for (const PhotoSelection& each : all) names_->addItem(from_utf8(each.name));
    names_->addItem(tr("A new selection"));
    const auto found = std::ranges::find(all, in_hand_.name, &PhotoSelection::name);
    names_->setCurrentIndex(static_cast<int>(found - all.begin()));
}

void SelectionPart::choose(int index) {
    in_hand_ = {};
    name_->setModified(false);
    if (index < names_->count() - 1) in_hand_.name = to_utf8(names_->itemText(index));
    session_.attempt([this] { refresh(); });
}

bool SelectionPart::holds(PhotoId photo) const {
    return std::ranges::find(in_hand_.photos, photo) != in_hand_.photos.end();
}

void SelectionPart::toggle(PhotoId photo) {
    std::vector<PhotoId> photos = in_hand_.photos;
    if (std::erase(photos, photo) == 0) photos.push_back(photo);
    keep(std::move(photos));
}

void SelectionPart::keep(std::vector<PhotoId> photos) {
    const PhotoSelection before = in_hand_;
    if (in_hand_.name.empty()) in_hand_.name = free_name();
    const bool kept = session_.change_records(keep_selection({in_hand_.name, std::move(photos)}));
    if (!kept) in_hand_ = before;
}

// "Website", "Website 2" …
std::string SelectionPart::free_name() const {
    std::string name = to_utf8(usual_name_);
    for (int number = 2; session_.library().selections().find(name); ++number) {
        name = to_utf8(usual_name_) + " " + std::to_string(number);
    }
    return name;
}

void SelectionPart::rename() {
    if (!name_->isModified()) return;
    name_->setModified(false);
    const std::string name = to_utf8(name_->text().simplified());
    const PhotoSelection before = in_hand_;
    if (name.empty() || name == before.name) return name_->setText(from_utf8(before.name));
    const auto taken = session_.library().selections().find(name);
    if (taken && taken->name != before.name) {
        session_.say(tr("There is a selection of this name already: choose another."));
        return name_->setText(from_utf8(before.name));
    }
    in_hand_.name = name;
    if (!session_.change_records(rename_selection(before, name))) in_hand_ = before;
}

}  // namespace quarterturn
