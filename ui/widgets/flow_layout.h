#pragma once

#include <QLayout>
#include <memory>
#include <vector>

namespace quarterturn {

// Lays its widgets out like words: along the reading direction, then on to the next row.
class FlowLayout : public QLayout {
    Q_OBJECT
  public:
    explicit FlowLayout(int gap, QWidget* parent = nullptr);
    ~FlowLayout() override;

    void addItem(QLayoutItem* item) override;
    int count() const override { return static_cast<int>(items_.size()); }
    QLayoutItem* itemAt(int index) const override;
    QLayoutItem* takeAt(int index) override;
    Qt::Orientations expandingDirections() const override { return {}; }
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize minimumSize() const override;
    QSize sizeHint() const override;
    void setGeometry(const QRect& area) override;

  private:
    int arrange(const QRect& area, bool move) const;  // answers the height

    std::vector<QLayoutItem*> items_;
    int gap_;
};

}  // namespace quarterturn
