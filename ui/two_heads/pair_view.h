#pragma once

#include <QImage>
#include <QTimer>
#include <QWidget>
#include <array>
#include <optional>

#include "indexer/sheet/laid_pair.h"

namespace quarterturn {

enum class PairMode { side_by_side, divide, fade, blink };

// One of the two: before or after, what was agreed or what was made.
struct PairSide {
    QImage picture;  // upright, not yet turned; null while it is on its way
    bool mirrored = false;
    QString which;    // "At the trial"
    QString when;     // its date and time
    QString missing;  // where there is none: what to do
};

// Two photos of one angle, both heads equally large and in the same place: side by side, with a
// divide that slides over them or one fading into the other (mouse, touch, arrow keys, Home and
// End), or in turns.
class PairView : public QWidget {
    Q_OBJECT
  public:
    explicit PairView(QWidget* parent = nullptr);

    // Until the pair is laid, both are shown whole, side by side.
    void show_pair(const PairSide& first, const PairSide& second,
                   const std::optional<LaidPair>& laid);
    void show_mode(PairMode mode);
    PairMode mode() const { return mode_; }

    // 0 all of the second photo … 1 all of the first.
    double divide() const { return divide_; }
    void slide_to(double divide);

    // How long each stands while they blink. Three flashes a second are the most that is safe
    // (WCAG 2.2, 2.3.1); a flash is both pictures, so a picture stands for a sixth of a second at
    // least, and here for longer.
    static constexpr int least_milliseconds = 400;
    static constexpr int usual_milliseconds = 1000;
    static constexpr int most_milliseconds = 5000;
    void stand_for(int milliseconds);
    bool blinks() const { return blinking_.isActive(); }
    void blink(bool on);                       // stopped, the other one is shown by Space
    int shown_side() const { return shown_; }  // 0 the first, 1 the second, while they blink

    QSize sizeHint() const override;

  signals:
    void blinking_changed(bool blinks);
    void moved(double divide);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void hideEvent(QHideEvent* event) override;

  private:
    QRectF cell(int side) const;
    QRectF middle_cell() const;
    void paint_side(QPainter& painter, int side, const QRectF& cell) const;
    void paint_hint(QPainter& painter, const QRectF& cell) const;
    void paint_move(QPainter& painter, const QRectF& cell) const;
    void paint_whole(QPainter& painter, int side, const QRectF& cell) const;
    void paint_missing(QPainter& painter, const QString& words, const QRectF& cell) const;
    QString caption(int side) const;  // the lines below its name
    QString said(int side) const;     // the same for those who cannot see it
    // Below a cell that ends at `bottom`, in so much of the width.
    void paint_caption(QPainter& painter, int side, double bottom, const QRectF& room,
                       Qt::Alignment to) const;
    QRectF half(int side) const;  // of the width
    QRectF inside_of_frame() const;
    void paint_beside(QPainter& painter) const;
    void paint_divided(QPainter& painter) const;
    void paint_divide(QPainter& painter, const QRectF& cell, double x) const;
    void paint_handle(QPainter& painter, const QPointF& middle) const;
    void paint_both_captions(QPainter& painter, double bottom) const;
    void paint_faded(QPainter& painter) const;
    void paint_in_turns(QPainter& painter) const;
    void show_other();
    void tell_state();
    double caption_height() const;
    bool leads_left() const { return layoutDirection() == Qt::LeftToRight; }
    bool slides() const { return mode_ == PairMode::divide || mode_ == PairMode::fade; }
    PairMode drawn_mode() const;

    std::array<PairSide, 2> sides_;
    std::optional<LaidPair> laid_;
    PairMode mode_ = PairMode::side_by_side;
    double divide_ = 0.5;
    int shown_ = 0;
    QTimer blinking_;
};

}  // namespace quarterturn
