#include "ui/portfolio_screen/balance_bars.h"

#include <QLocale>
#include <QPainter>
#include <QStyle>

#include "ui/theme/theme.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int bar_height_steps = 2;

int row_height() {
    return QFontMetrics(text_font(TextRole::body)).height() + space(bar_height_steps) + space(2);
}

}  // namespace

class BalanceBars::Bars : public QWidget {
  public:
    void show_counts(const std::vector<FactCount>& counts) {
        counts_ = counts;
        QStringList words;
        for (const FactCount& count : counts) {
            words << from_utf8(count.value) + QLatin1Char(' ') + QString::number(count.photos);
        }
        setAccessibleName(words.join(QStringLiteral(", ")));
        setFixedHeight(row_height() * static_cast<int>(counts.size()));
        update();
    }

  protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setFont(text_font(TextRole::body));
        int most = 1;
        for (const FactCount& count : counts_) most = std::max(most, count.photos);
        int top = 0;
        for (const FactCount& count : counts_) {
            draw(painter, {0, top, width(), row_height()}, count, most);
            top += row_height();
        }
    }

  private:
    void draw(QPainter& painter, const QRect& row, const FactCount& count, int most) const {
        const int line = painter.fontMetrics().height();
        const QRect words(row.left(), row.top(), row.width(), line);
        const QString number =
            count.photos == 0 ? BalanceBars::tr("never") : QLocale().toString(count.photos);
        const int number_width = painter.fontMetrics().horizontalAdvance(number) + space(2);
        const auto place = [&](const QRect& part) {
            return QStyle::visualRect(layoutDirection(), words, part);
        };
        painter.setPen(ink_colour(palette()));
        const QRect name = words.adjusted(0, 0, -number_width, 0);
        painter.drawText(
            place(name), Qt::AlignLeading | Qt::AlignVCenter,
            painter.fontMetrics().elidedText(from_utf8(count.value), Qt::ElideRight, name.width()));
        painter.setPen(count.photos == 0 ? quiet_colour(palette()) : ink_colour(palette()));
        painter.drawText(place({words.right() + 1 - number_width, words.top(), number_width, line}),
                         Qt::AlignTrailing | Qt::AlignVCenter, number);
        draw_bar(painter, {row.left(), row.top() + line, row.width(), space(bar_height_steps)},
                 static_cast<double>(count.photos) / most);
    }

    void draw_bar(QPainter& painter, const QRect& area, double share) const {
        const QRect bar = area.adjusted(0, space(1) / 2, 0, -space(1) / 2);
        painter.setPen(QPen(outline_colour(palette()), 1));
        painter.setBrush(Qt::NoBrush);
        const double round = bar.height() / 2.0;
        painter.drawRoundedRect(QRectF(bar).adjusted(0.5, 0.5, -0.5, -0.5), round, round);
        if (share <= 0) return;
        const QRect full(bar.left(), bar.top(), std::max(qRound(bar.width() * share), bar.height()),
                         bar.height());
        painter.setPen(Qt::NoPen);
        painter.setBrush(accent_colour(palette()));
        painter.drawRoundedRect(QStyle::visualRect(layoutDirection(), bar, full), round, round);
    }

    std::vector<FactCount> counts_;
};

BalanceBars::BalanceBars(const QString& heading, QWidget* parent)
    : QWidget(parent), nothing_(make_quiet(tr("No look says so yet."))), bars_(new Bars) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space(1));
    column->addWidget(make_quiet(heading));
    column->addWidget(nothing_);
    column->addWidget(bars_);
}

void BalanceBars::show_counts(const std::vector<FactCount>& counts) {
    nothing_->setVisible(counts.empty());
    bars_->setVisible(!counts.empty());
    bars_->show_counts(counts);
}

}  // namespace quarterturn
