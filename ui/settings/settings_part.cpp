#include "ui/settings/settings_part.h"

#include "ui/theme/theme.h"
#include "ui/widgets/parts.h"

namespace quarterturn {

SettingsPart::SettingsPart(const QString& heading, const QString& what_for)
    : column_(new QVBoxLayout(this)) {
    setProperty("kind", QStringLiteral("card"));
    column_->setContentsMargins(space(6), space(5), space(6), space(5));
    column_->setSpacing(space(2));
    column_->addWidget(make_heading(heading));
    column_->addWidget(make_quiet(what_for));
    column_->addSpacing(space(1));
}

}  // namespace quarterturn
